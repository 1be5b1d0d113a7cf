import type { Container } from '../../../engine/kitchen/container.ts';
import { lookUp, type Reading } from '../grammar/reading.ts';

const HOLDS_FORM = /^(\d{1,4}) +([a-z0-9-]+)$/;

/** How many of one kind of container something holds: one entry of its `holds`, `5 full-pan-2`. */
export function linkHeld(
  reading: Reading,
  index: number,
  text: string,
  containers: ReadonlyMap<string, Container>,
): { readonly count: number; readonly container: string } | undefined {
  const [, number, container] = HOLDS_FORM.exec(text) ?? [];
  if (number === undefined || container === undefined || Number(number) === 0) {
    reading.say(
      'not-understood',
      ['holds', index],
      `“${text}” does not give a number and a container`,
      'write a number and a container’s id, such as 5 full-pan-2, or 1 batch',
    );
    return undefined;
  }
  lookUp(reading, 'container', container, containers, ['holds', index]);
  return { count: Number(number), container };
}
