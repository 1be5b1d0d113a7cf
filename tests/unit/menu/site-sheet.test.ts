import { describe, expect, it } from 'vitest';
import {
  notAsked,
  publicVenue,
  SITE_QUESTIONS,
  type SiteSheet,
  siteFacts,
} from '../../../src/engine/menu/site-sheet.ts';

const SHEET: SiteSheet = {
  id: 'net-loft',
  name: 'The Net Loft',
  address: '4 Chandler Row',
  facts: new Map([
    ['power', 'two 20 A circuits'],
    ['water', 'no'],
    ['phone', '555-0119'],
    ['gate code', '4471'],
  ]),
  photos: [],
};

describe('a site sheet and what a proposal states of the same place', () => {
  it('is the sheet where the proposal states nothing', () => {
    expect([...siteFacts(SHEET, new Map())]).toEqual([
      ['name', 'The Net Loft'],
      ['address', '4 Chandler Row'],
      ['power', 'two 20 A circuits'],
      ['water', 'no'],
      ['phone', '555-0119'],
      ['gate code', '4471'],
    ]);
  });

  it('is the proposal’s wherever both say something, however it writes the fact', () => {
    const facts = siteFacts(
      SHEET,
      new Map([
        [' Water ', 'yes, a hose for the day'],
        ['name', 'The Net Loft, upper floor'],
        ['stairs', '20 steps'],
      ]),
    );
    expect(Object.fromEntries(facts)).toEqual({
      name: 'The Net Loft, upper floor',
      address: '4 Chandler Row',
      power: 'two 20 A circuits',
      water: 'yes, a hose for the day',
      phone: '555-0119',
      'gate code': '4471',
      stairs: '20 steps',
    });
  });

  it('is the proposal’s alone without a sheet', () => {
    const stated = new Map([['water', 'yes']]);
    expect(siteFacts(undefined, stated)).toBe(stated);
    expect(publicVenue(undefined, stated)).toBe(stated);
  });

  it('shows a client name and address of the sheet, and what the proposal itself states', () => {
    expect(Object.fromEntries(publicVenue(SHEET, new Map([['way in', 'north door']])))).toEqual({
      name: 'The Net Loft',
      address: '4 Chandler Row',
      'way in': 'north door',
    });
  });

  it('lists what nobody has asked in the order of the walk, and a “none” is an answer', () => {
    expect(notAsked(siteFacts(SHEET, new Map([['Ovens', 'none']])))).toEqual([
      'cold space',
      'burners',
      'cover',
      'surface',
      'stairs',
      'way in',
      'parking',
      'trash',
      'contact',
    ]);
    expect(notAsked(new Map())).toEqual([...SITE_QUESTIONS]);
  });
});
