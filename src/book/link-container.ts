import Fraction from 'fraction.js';
import type { Container } from '../engine/kitchen/container.ts';
import type { Equipment } from '../engine/kitchen/kitchen.ts';
import { parseDepth } from '../engine/kitchen/parse-depth.ts';
import { parsePart } from '../engine/kitchen/parse-part.ts';
import { parseQuantity } from '../engine/measure/parse-quantity.ts';
import type { KitchenText } from '../schema/kitchen.ts';
import { wholeNumber } from './plain-grammars.ts';
import { lookUp, type Reading } from './reading.ts';
import { idInWords } from './words.ts';

/** A pan, tub, bowl, bag or tray. */
export function linkContainer(
  reading: Reading,
  id: string,
  text: NonNullable<KitchenText['containers']>[string],
): Container | undefined {
  const holds = reading.understand(['holds'], text.holds, parseQuantity);
  const fill =
    text.fill === undefined ? new Fraction(1n) : reading.understand(['fill'], text.fill, parsePart);
  const depthInches =
    text.depth === undefined ? undefined : reading.understand(['depth'], text.depth, parseDepth);
  return holds && fill && { id, name: text.name ?? idInWords(id), holds, fill, depthInches, for: text.for };
}

const HOLDS_FORM = /^(\d{1,4}) +([a-z0-9-]+)$/;

/** What cooks or keeps: how many there are, and how many of which container one holds. */
export function linkEquipment(
  reading: Reading,
  id: string,
  text: NonNullable<KitchenText['equipment']>[string],
  containers: ReadonlyMap<string, Container>,
): Equipment | undefined {
  const count = reading.understand(['count'], text.count ?? '1', wholeNumber(1, 10_000));
  if (count === undefined) return undefined;
  const name = text.name ?? idInWords(id);
  if (text.holds === undefined) return { id, name, count, holds: undefined };
  const [, number, container] = HOLDS_FORM.exec(text.holds) ?? [];
  if (number === undefined || container === undefined || Number(number) === 0) {
    const what = `“${text.holds}” does not say how many of what it holds`;
    reading.say(
      'not-understood',
      ['holds'],
      what,
      'write a number and a container’s id, such as 5 full-pan-2',
    );
    return undefined;
  }
  lookUp(reading, 'container', container, containers, ['holds']);
  return { id, name, count, holds: { count: Number(number), container } };
}
