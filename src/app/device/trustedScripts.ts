/**
 * The only place where an address becomes a script: browsers with Trusted Types refuse every other way. It lets
 * through what the build put beside the page, and nothing that a person, a file or another host could have given.
 */

interface ScriptPolicy {
  createScriptURL(address: string): unknown;
}

interface PolicyFactory {
  createPolicy(name: string, rules: { createScriptURL: (address: string) => string }): ScriptPolicy;
}

/** The address itself if it lies in the folder of this page; throws otherwise. */
function ownScript(address: string): string {
  const { href } = new URL(address, document.baseURI);
  if (!href.startsWith(new URL('./', document.baseURI).href))
    throw new TypeError('not a script of this site');
  return href;
}

let policy: ScriptPolicy | null = null;

/** The address as the browser wants it for a worker: trusted where it knows such a thing, plain where not. */
export function trustedScript(address: string): string {
  const { trustedTypes } = globalThis as { trustedTypes?: PolicyFactory };
  if (trustedTypes === undefined) return ownScript(address);
  policy ??= trustedTypes.createPolicy('before-the-hill', { createScriptURL: ownScript });
  // The DOM library does not know trusted addresses; browsers take them wherever they take text.
  return policy.createScriptURL(address) as string;
}
