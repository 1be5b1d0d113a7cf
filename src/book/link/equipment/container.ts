import Fraction from 'fraction.js';
import type { Container } from '../../../engine/kitchen/container.ts';
import type { Equipment } from '../../../engine/kitchen/kitchen.ts';
import { parseAmperes } from '../../../engine/kitchen/parse-amperes.ts';
import { parseBurns } from '../../../engine/kitchen/parse-burns.ts';
import { parseDepth } from '../../../engine/kitchen/parse-depth.ts';
import { parseGrams } from '../../../engine/kitchen/parse-grams.ts';
import { parsePart } from '../../../engine/kitchen/parse-part.ts';
import { parseDuration } from '../../../engine/measure/duration.ts';
import { parseQuantity } from '../../../engine/measure/parse-quantity.ts';
import { parseShare } from '../../../engine/measure/parse-share.ts';
import { notParsed, type Parsed } from '../../../engine/parsed.ts';
import { COLD_ROOM } from '../../../engine/plan/days/cold-room.ts';
import type { KitchenText } from '../../../schema/kitchen.ts';
import { idInWords } from '../../findings/words.ts';
import { wholeNumber } from '../grammar/plain-grammars.ts';
import { lookUp, type Reading } from '../grammar/reading.ts';
import { linkHeld } from './held.ts';
import { linkReturn } from './return-facts.ts';

/** A pan, tub, bowl, bag or tray. */
export function linkContainer(
  reading: Reading,
  id: string,
  text: NonNullable<KitchenText['containers']>[string],
  currency: string,
): Container | undefined {
  const holds = reading.understand(['holds'], text.holds, parseQuantity);
  const fill =
    text.fill === undefined ? new Fraction(1n) : reading.understand(['fill'], text.fill, parsePart);
  const over = text.over === undefined ? undefined : reading.understand(['over'], text.over, parseOver);
  const depthInches =
    text.depth === undefined ? undefined : reading.understand(['depth'], text.depth, parseDepth);
  const grams =
    text.weighs === undefined ? undefined : reading.understand(['weighs'], text.weighs, parseGrams);
  return (
    holds &&
    fill && {
      id,
      name: text.name ?? idInWords(id),
      holds,
      fill,
      ...(over && { over }),
      depthInches,
      ...(grams && { grams }),
      ...(text['on its own'] === 'yes' && { onItsOwn: true }),
      for: text.for,
      ...linkReturn(reading, text, currency),
    }
  );
}

/** The most that may be written: a container a quarter too full is another one. */
const MOST_OVER = new Fraction(1n, 4n);

function parseOver(text: string): Parsed<Fraction> {
  const share = parseShare(text);
  if (!share.ok || !share.value.gt(MOST_OVER)) return share;
  return notParsed(`“${text.trim()}” is too much to overfill`, 'write a percentage from 0 % to 25 %');
}

/** What keeps food waiting says what it holds, and is counted once. */
function sayKeeps(
  reading: Reading,
  id: string,
  { chills }: NonNullable<KitchenText['equipment']>[string],
  isHoldsStated: boolean,
): void {
  if (!isHoldsStated)
    reading.say(
      'no-value',
      ['keeps'],
      '“keeps” is stated, but “holds” names no container',
      'write under “holds” how many of which container it keeps, such as 8 full-pan-2',
    );
  if (id === COLD_ROOM)
    reading.say(
      'no-value',
      ['keeps'],
      `“keeps” is stated for ${COLD_ROOM}, which each day’s page counts by the day already`,
      'delete “keeps” here, or give the refrigerator that finished food waits in an entry of its own',
    );
  if (chills !== undefined)
    reading.say(
      'no-value',
      ['keeps'],
      '“keeps” and “chills” are both stated, so one pan would be counted twice',
      'keep one of them, or split it into two entries, each with what it holds',
    );
}

const BATCHES_FORM = /^([1-9]\d{0,2}) +batch(?:es)?$/;

/** What cooks or keeps: how many there are, how many of which container one holds, and where it stands. */
export function linkEquipment(
  reading: Reading,
  id: string,
  text: NonNullable<KitchenText['equipment']>[string],
  containers: ReadonlyMap<string, Container>,
  stations: ReadonlyMap<string, string>,
  currency: string,
): Equipment | undefined {
  const count = reading.understand(['count'], text.count ?? '1', wholeNumber(1, 10_000));
  if (count === undefined) return undefined;
  if (text.station !== undefined) lookUp(reading, 'station', text.station, stations, ['station']);
  const stated = (text.holds ?? []).filter((each) => !BATCHES_FORM.test(each));
  const batches = (text.holds ?? []).flatMap((each) => BATCHES_FORM.exec(each)?.[1] ?? []).map(Number);
  const holds = stated.flatMap((each) => {
    const index = (text.holds ?? []).indexOf(each);
    const held = linkHeld(reading, index, each, containers);
    return held ? [held] : [];
  });
  if (holds.length < stated.length) return undefined;
  const station = text.keeps ? undefined : (text.station ?? (stations.has(id) ? id : undefined));
  if (text.keeps) sayKeeps(reading, id, text, holds.length > 0);
  const chills =
    text.chills === undefined ? undefined : reading.understand(['chills'], text.chills, parseDuration);
  if (chills !== undefined && holds.length === 0) {
    reading.say(
      'no-value',
      ['chills'],
      '“chills” is stated, but “holds” names no container',
      'write under “holds” how many of which container it takes at once, such as 6 shallow-pan',
    );
  }
  const amperes =
    text.draws === undefined ? undefined : reading.understand(['draws'], text.draws, parseAmperes);
  const heats =
    text['heats in'] === undefined
      ? undefined
      : reading.understand(['heats in'], text['heats in'], parseDuration);
  const burns = text.burns === undefined ? undefined : reading.understand(['burns'], text.burns, parseBurns);
  const fuelText = text['fuel comes in'];
  const fuelIn =
    fuelText === undefined ? undefined : reading.understand(['fuel comes in'], fuelText, parseQuantity);
  const grams =
    text.weighs === undefined ? undefined : reading.understand(['weighs'], text.weighs, parseGrams);
  return {
    id,
    name: text.name ?? idInWords(id),
    count,
    holds,
    ...(batches[0] !== undefined && { batches: batches[0] }),
    ...(text['by hand'] !== undefined && { byHand: text['by hand'] === 'yes' }),
    ...(chills !== undefined && { chills }),
    ...(text.keeps && { keeps: text.keeps }),
    station,
    ...(text.travels === 'yes' && { travels: true }),
    ...(amperes !== undefined && { amperes }),
    ...(heats !== undefined && { heats }),
    ...(burns && { burns }),
    ...(fuelIn && { fuelIn }),
    ...(grams && { grams }),
    ...linkReturn(reading, text, currency),
  };
}
