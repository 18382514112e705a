/**
 * A certificate of the computer's own, for https in a network without a name on the open one. It signs itself and is
 * good for this computer's names and addresses only: whoever gets hold of its key can pretend to be no other place.
 * Written by the rules of X.509 (RFC 5280) in DER.
 */
import { createHash, generateKeyPairSync, randomBytes, sign, X509Certificate } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { isIP } from 'node:net';
import { join } from 'node:path';
import { writeWhole } from './settings.mjs';

/** @typedef {{ readonly key: string, readonly cert: string }} Tls */

const FILE = 'https.json';
const DAY_MS = 86_400_000;
/** Apple's devices take no certificate that is good for more than 398 days. */
const GOOD_DAYS = 397;
/** A new one is made before the old one ends in the middle of an evening. */
const RENEW_DAYS = 7;

/** Numbers of the kinds of values in DER. */
const TAG = {
  bool: 0x01,
  whole: 0x02,
  bits: 0x03,
  octets: 0x04,
  name: 0x06,
  text: 0x0c,
  time: 0x17,
  list: 0x30,
  set: 0x31,
};
/** Object identifiers, as they stand in a certificate. */
const ID = {
  ecdsaSha256: '2a8648ce3d040302',
  commonName: '550403',
  subjectAltName: '551d11',
  basicConstraints: '551d13',
  keyUsage: '551d0f',
  extKeyUsage: '551d25',
  serverAuth: '2b06010505070301',
};

/** @param {number} tag @param {...Uint8Array} parts */
function der(tag, ...parts) {
  const body = Buffer.concat(parts);
  const size = body.length;
  const length = size < 0x80 ? [size] : size < 0x100 ? [0x81, size] : [0x82, size >> 8, size & 0xff];
  return Buffer.concat([Buffer.from([tag, ...length]), body]);
}

/** @param {string} hex */
const id = (hex) => der(TAG.name, Buffer.from(hex, 'hex'));
/** @param {number} atMs two digits of the year, as until 2049 */
const time = (atMs) =>
  der(TAG.time, Buffer.from(`${new Date(atMs).toISOString().replace(/[-:T]/g, '').slice(2, 14)}Z`));
/** @param {string} name @param {boolean} critical @param {Uint8Array} value */
const extension = (name, critical, value) =>
  der(TAG.list, id(name), ...(critical ? [der(TAG.bool, Buffer.from([0xff]))] : []), der(TAG.octets, value));

/** A name or an address as it stands among those a certificate is good for. @param {string} name */
function altName(name) {
  const plain = name.replace(/^\[|\]$/g, '');
  return isIP(plain) === 0 ? der(0x82, Buffer.from(plain, 'ascii')) : der(0x87, addressBytes(plain));
}

/** @param {string} address */
function addressBytes(address) {
  if (isIP(address) === 4) return Buffer.from(address.split('.').map(Number));
  // The browser's own way of writing addresses has no part of four numbers and no zone in it.
  const [plain = ''] = address.split('%');
  const [head = '', tail] = new URL(`http://[${plain}]`).hostname.slice(1, -1).split('::');
  const words = (/** @type {string} */ part) => (part === '' ? [] : part.split(':'));
  const [first, last] = [words(head), words(tail ?? '')];
  const all = [...first, ...Array(8 - first.length - last.length).fill('0'), ...last];
  return Buffer.from(
    all.flatMap((word) => [Number.parseInt(word, 16) >> 8, Number.parseInt(word, 16) & 0xff]),
  );
}

/**
 * Makes a key and a certificate.
 * @param {readonly string[]} names names and addresses of this computer
 * @param {number} nowMs
 * @returns {Tls} both as PEM
 */
export function makeCertificate(names, nowMs) {
  const { privateKey, publicKey } = generateKeyPairSync('ec', { namedCurve: 'prime256v1' });
  const algorithm = der(TAG.list, id(ID.ecdsaSha256));
  const who = der(
    TAG.list,
    der(
      TAG.set,
      der(TAG.list, id(ID.commonName), der(TAG.text, Buffer.from('Before the Hill, this computer'))),
    ),
  );
  const serial = randomBytes(16);
  // Not negative, and no superfluous zero in front.
  serial[0] = ((serial[0] ?? 0) & 0x7f) | 0x40;
  const extensions = [
    extension(ID.basicConstraints, true, der(TAG.list)),
    // Only to sign what is said on the way.
    extension(ID.keyUsage, true, der(TAG.bits, Buffer.from([7, 0x80]))),
    extension(ID.extKeyUsage, false, der(TAG.list, id(ID.serverAuth))),
    extension(ID.subjectAltName, false, der(TAG.list, ...names.map(altName))),
  ];
  const content = der(
    TAG.list,
    der(0xa0, der(TAG.whole, Buffer.from([2]))),
    der(TAG.whole, serial),
    algorithm,
    who,
    der(TAG.list, time(nowMs - DAY_MS), time(nowMs + GOOD_DAYS * DAY_MS - DAY_MS)),
    who,
    publicKey.export({ type: 'spki', format: 'der' }),
    der(0xa3, der(TAG.list, ...extensions)),
  );
  const signature = der(TAG.bits, Buffer.from([0]), sign('sha256', content, privateKey));
  const whole = der(TAG.list, content, algorithm, signature).toString('base64');
  return {
    key: privateKey.export({ type: 'pkcs8', format: 'pem' }).toString(),
    cert: `-----BEGIN CERTIFICATE-----\n${whole.replace(/.{64}/g, '$&\n').trimEnd()}\n-----END CERTIFICATE-----\n`,
  };
}

/**
 * The certificate of a folder; a new one where this computer has come to another address or the old one ends soon.
 * @param {string} folder
 * @param {readonly string[]} names
 * @param {number} nowMs
 * @returns {Promise<Tls & { readonly isNew: boolean, readonly fingerprint: string }>}
 */
export async function certificateOf(folder, names, nowMs) {
  const kept = await readFile(join(folder, FILE), 'utf8')
    .then((text) => /** @type {Tls} */ (JSON.parse(text)))
    .catch(() => null);
  if (kept !== null && isGood(kept, names, nowMs))
    return { ...kept, isNew: false, fingerprint: fingerprintOf(kept) };
  const made = makeCertificate(names, nowMs);
  await writeWhole(folder, FILE, `${JSON.stringify(made)}\n`);
  return { ...made, isNew: true, fingerprint: fingerprintOf(made) };
}

/** @param {Tls} tls @param {readonly string[]} names @param {number} nowMs */
function isGood({ cert, key }, names, nowMs) {
  try {
    const read = new X509Certificate(cert);
    const covers = (/** @type {string} */ name) => {
      const plain = name.replace(/^\[|\]$/g, '');
      return (isIP(plain) === 0 ? read.checkHost(plain) : read.checkIP(plain)) !== undefined;
    };
    return key !== '' && Date.parse(read.validTo) > nowMs + RENEW_DAYS * DAY_MS && names.every(covers);
  } catch {
    return false;
  }
}

/** As browsers show it, to be compared with. @param {Tls} tls */
function fingerprintOf({ cert }) {
  const bytes = new X509Certificate(cert).raw;
  return createHash('sha256')
    .update(bytes)
    .digest('hex')
    .toUpperCase()
    .replace(/..(?=.)/g, '$&:');
}
