/** The settings of a store as a link: whole or not at all, also through mail, and for a store beside the game. */
import { describe, expect, it } from 'vitest';
import { readStoreLink, storeLink } from '../../../src/features/handover/storeCode.ts';

const SITE = 'http://192.168.1.5:4173/';
const FAR = {
  url: 'https://rides.club.example/couch',
  database: 'rides',
  name: 'clüb',
  password: 'hügel:42 ☃',
};

describe('a link with settings', () => {
  it('of a store elsewhere says where it is, whatever page it is opened on', () => {
    const link = storeLink(FAR, SITE, SITE);
    expect(link.startsWith(`${SITE}#clinic/store/`)).toBe(true);
    expect(readStoreLink(link, 'https://another.example/')).toEqual(FAR);
  });

  it('of a store beside the game leads to the address the game is opened under', () => {
    const beside = { ...FAR, url: 'http://localhost:4173' };
    const link = storeLink(beside, 'http://localhost:4173/#clinic/store', SITE);
    expect(readStoreLink(link, 'http://localhost:4173/')).toEqual({ ...FAR, url: 'http://192.168.1.5:4173' });
    const behind = link.slice(link.indexOf('#'));
    expect(readStoreLink(behind, 'http://hall.local:4173/x/')).toEqual({
      ...FAR,
      url: 'http://hall.local:4173',
    });
  });

  it('survives mail: broken lines, an escaped slash, words round it', () => {
    const link = storeLink(FAR, SITE, SITE);
    const broken = link.replace(/.{40}/g, '$&\r\n ');
    for (const text of [broken, link.replaceAll('store/', 'store%2F'), `Settings for tonight: ${link}`])
      expect(readStoreLink(text, SITE)).toEqual(FAR);
  });

  it.each([
    ['nothing', ''],
    ['another page', `${SITE}#join/B1`],
    ['no settings', `${SITE}#clinic/store`],
    ['no JSON', `${SITE}#clinic/store/abcd`],
    ['another shape', `${SITE}#clinic/store/${btoa('{"url":"x"}')}`],
    ['a newer version', `${SITE}#clinic/store/${btoa('[2,"","rides","club","x"]')}`],
    ['a part missing', `${SITE}#clinic/store/${btoa('[1,"","rides","club"]')}`],
    ['a number', `${SITE}#clinic/store/${btoa('[1,"","rides","club",7]')}`],
    ['no database', `${SITE}#clinic/store/${btoa('[1,"","","club","x"]')}`],
    ['a part too long', `${SITE}#clinic/store/${btoa(`[1,"","rides","club","${'x'.repeat(401)}"]`)}`],
  ])('with %s is none', (_, text) => {
    expect(readStoreLink(text, SITE)).toBeNull();
  });

  it('cut anywhere is none, and never the settings of another', () => {
    const link = storeLink(FAR, SITE, SITE);
    for (let length = 0; length < link.length; length += 1)
      expect(readStoreLink(link.slice(0, length), SITE)).toBeNull();
  });
});
