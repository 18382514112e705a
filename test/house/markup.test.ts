/**
 * No text becomes markup or code: what people type, files bring and codes carry is shown as text. Browsers with
 * Trusted Types refuse the same things; this says so before a browser is asked.
 */
import { describe, expect, it } from 'vitest';
import { listFiles, readTexts } from './files.ts';
import { readModule, type SyntaxNode, walk } from './syntax.ts';

/** Members and names through which text becomes markup or code. */
const forbidden = new Set([
  'innerHTML',
  'outerHTML',
  'insertAdjacentHTML',
  'setHTMLUnsafe',
  'parseHTMLUnsafe',
  'createContextualFragment',
  'dangerouslySetInnerHTML',
  'srcdoc',
  'DOMParser',
  'eval',
  'Function',
  'importScripts',
]);
/** The one place that trusts an address. */
const TRUSTING = 'src/app/device/trustedScripts.ts';

function namesIn(node: SyntaxNode): string[] {
  if (node.type === 'Identifier' || node.type === 'JSXIdentifier') return [String(node['name'])];
  // `element['innerHTML']` is the same thing.
  if (node.type === 'Literal' && typeof node['value'] === 'string') return [node['value']];
  return [];
}

function isDocumentWrite(node: SyntaxNode): boolean {
  if (node.type !== 'MemberExpression') return false;
  const [object, property] = [node['object'], node['property']] as SyntaxNode[];
  return object?.['name'] === 'document' && ['write', 'writeln'].includes(String(property?.['name']));
}

/** Every place where text could become markup or code, as `file:line name`. */
function findMarkup(path: string, text: string): string[] {
  const module = readModule(path, text);
  const found: string[] = [];
  walk(module.program, (node) => {
    const names = namesIn(node).filter((name) => forbidden.has(name));
    if (isDocumentWrite(node)) names.push('document.write');
    if (path !== TRUSTING) names.push(...namesIn(node).filter((name) => name === 'trustedTypes'));
    found.push(...names.map((name) => `${path}:${module.lineOf(node.start)} ${name}`));
  });
  return found;
}

describe('text stays text', () => {
  it('everywhere in the game', () => {
    const sources = [...readTexts(listFiles())].filter(([path]) => /^src\/.*\.tsx?$/.test(path));
    expect(sources.length).toBeGreaterThan(100);
    expect(sources.flatMap(([path, text]) => findMarkup(path, text))).toEqual([]);
  });

  it.each([
    ['element.innerHTML = name;', 'innerHTML'],
    ["element['outerHTML'] = name;", 'outerHTML'],
    ["element.insertAdjacentHTML('beforeend', name);", 'insertAdjacentHTML'],
    ['document.write(name);', 'document.write'],
    ['const one = new Function(name);', 'Function'],
    ['const b = <b dangerouslySetInnerHTML={{ __html: name }} />;', 'dangerouslySetInnerHTML'],
    ["trustedTypes.createPolicy('x', {});", 'trustedTypes'],
  ])('is seen to be broken by %s', (text, name) => {
    expect(findMarkup('src/features/bike/b.tsx', text)).toContain(`src/features/bike/b.tsx:1 ${name}`);
  });

  it('lets the same words be spoken of', () => {
    expect(findMarkup('src/features/bike/b.tsx', '// never innerHTML\nelement.textContent = name;')).toEqual(
      [],
    );
  });
});
