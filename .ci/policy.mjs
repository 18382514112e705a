/**
 * What the built pages may load, run and talk to, in one place: the build writes it into the page, so that it holds
 * on any host; the start script and the tests send it with every answer as well. Why each line is there stands in
 * DEVELOPERS.md.
 */

/** Rules that also hold when they stand in the page itself. */
const rules = {
  'default-src': "'none'",
  'script-src': "'self'",
  'worker-src': "'self'",
  'style-src': "'self'",
  // `data:` for the grain of the paper, `blob:` for charts that are kept as pictures.
  'img-src': "'self' data: blob:",
  'media-src': "'self' blob: data:",
  'font-src': "'self'",
  'manifest-src': "'self'",
  // A club's own store: its address is typed in by the coach, so it cannot be known here.
  'connect-src': "'self' https: http://localhost:* http://127.0.0.1:*",
  'base-uri': "'none'",
  'form-action': "'none'",
  'require-trusted-types-for': "'script'",
  'trusted-types': 'before-the-hill',
};

/** @param {Record<string, string>} list */
const written = (list) =>
  Object.entries(list)
    .map(([name, value]) => `${name} ${value}`)
    .join('; ');

/** The policy as it stands in the page. */
export const pagePolicy = written(rules);

/**
 * Answers of a server. A page cannot forbid for itself that others frame it.
 * @type {Readonly<Record<string, string>>}
 */
export const siteHeaders = {
  'content-security-policy': written({ ...rules, 'frame-ancestors': "'none'" }),
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'permissions-policy': 'camera=(self), screen-wake-lock=(self), geolocation=(), microphone=()',
  'referrer-policy': 'no-referrer',
  'x-content-type-options': 'nosniff',
  // The page and the worker are asked for anew every time; whatever else changes gets another name.
  'cache-control': 'no-cache',
};
