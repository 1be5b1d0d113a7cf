import type { Kitchen } from '../../../engine/kitchen/kitchen.ts';
import { type DeliveryZone, zoneAt } from '../../../engine/menu/delivery-zone.ts';
import { parseDistance } from '../../../engine/menu/parse-distance.ts';
import type { ProposalText } from '../../../schema/proposal.ts';
import { lookUp, type Reading } from '../grammar/reading.ts';

/**
 * The zone that a proposal's event is delivered in: the one it names, else the nearest that reaches its distance. A zone that
 * cannot be read might be the one that counts, so a distance is then not looked up. Said where no zone reaches so far, unless
 * the proposal has a price of its own.
 */
export function linkZone(
  reading: Reading,
  { zone, distance, delivery }: Pick<ProposalText, 'zone' | 'distance' | 'delivery'>,
  zones: Kitchen['deliveryZones'],
): DeliveryZone | undefined {
  const meters =
    distance === undefined ? undefined : reading.understand(['distance'], distance, parseDistance);
  if (zone !== undefined) return lookUp(reading, 'delivery-zone', zone, zones ?? new Map(), ['zone']);
  if (!meters || !zones) return undefined;
  const unread = [...reading.ledger.held.keys()].find((key) => key.startsWith('delivery-zone/'));
  if (unread) {
    reading.restOn(unread);
    return undefined;
  }
  const found = zoneAt(zones.values(), meters);
  if (!found && delivery === undefined)
    reading.say(
      'out-of-zones',
      ['distance'],
      `${distance} is farther than every delivery zone reaches`,
      'write what delivery costs under “delivery”, or add a zone to kitchen.yaml',
    );
  return found;
}
