import type { Kitchen } from '../../engine/kitchen/kitchen.ts';
import type { DeliveryZone } from '../../engine/menu/delivery-zone.ts';
import type { Package } from '../../engine/menu/package.ts';
import type { Proposal } from '../../engine/menu/proposal.ts';
import { hoursServed } from '../../engine/menu/time-away.ts';
import { Decimal } from '../../engine/money/decimal.ts';
import { parseAddOnPrice } from '../../engine/quote/add-on-price.ts';
import { countsText, DEFAULT_COUNTS } from '../../engine/quote/counts.ts';
import type {
  AddOnTerms,
  MaybeNamed,
  MinimumSpendTerms,
  PackageTerms,
  StaffTerms,
  Terms,
} from '../../engine/quote/terms.ts';
import { hasRise, type PriceTier } from '../../engine/quote/tiers.ts';
import { type Say, wordsIn } from '../../words/words-in.ts';
import { dishTerms } from './dish-terms.ts';

/**
 * The sell-side terms of a proposal: everything a price is computed from and nothing of what it costs the
 * kitchen. `tiersOf` gives each package's tiers, those of a food-cost target already resolved.
 */
export function proposalTerms(
  proposal: Proposal,
  kitchen: Kitchen,
  tiersOf: (chosen: Package) => readonly PriceTier[],
): Terms {
  const say = wordsIn(kitchen.locale);
  const { id, name, taxIncluded, tax, delivery: placeDelivery } = proposal.place;
  const { zone } = proposal;
  const delivery = proposal.delivery ?? zone?.price ?? placeDelivery;
  const minimum = zone?.minimum ?? proposal.place.minimum;
  return {
    version: 1,
    currency: kitchen.currency,
    locale: kitchen.locale,
    ...(countsText(kitchen.counts) === countsText(DEFAULT_COUNTS) ? {} : { perGuest: kitchen.counts }),
    taxBy: kitchen.taxBy,
    place: { id, name, taxIncluded, tax },
    exempt: proposal.client.exempt,
    eventDate: proposal.date,
    packages: proposal.packages.map((each) =>
      packageTerms(each, kitchen, tiersOf(each), proposal.hours, minimum),
    ),
    addOns: proposal.addOns.flatMap((addOn) => addOnTerms(addOn, kitchen)),
    staff: staffTerms(proposal, kitchen),
    delivery: delivery === null ? null : { label: deliveryLabel(say, name, zone), price: delivery },
    discount: named(proposal.discount, say('offer.discount')),
    serviceCharge: named(proposal.serviceCharge, say('offer.service-charge')),
    minimumSpend: minimum === undefined ? null : foodMinimum(minimum),
    payments: proposal.payments,
    guarantee: proposal.guarantee,
  };
}

/** A charge or money off under its own name, else under the one that the kitchen's language has for it. */
function named<Named extends { readonly label: string }>(
  written: MaybeNamed<Named> | null,
  usual: string,
): (MaybeNamed<Named> & { readonly label: string }) | null {
  return written && { ...written, label: written.label ?? usual };
}

function packageTerms(
  chosen: Package,
  kitchen: Kitchen,
  tiers: readonly PriceTier[],
  crewHours: string | null,
  zoneMinimum: string | undefined,
): PackageTerms {
  const hours = hoursServed(chosen.hours, crewHours);
  return {
    id: chosen.id,
    name: chosen.name,
    style: chosen.style,
    tiers,
    neverLessInAll: chosen.neverLessInAll,
    ...(chosen.neverLessInAll && hasRise(tiers) ? { floorTiers: 'reached' as const } : {}),
    tierCounts: chosen.tierCounts,
    child: chosen.child,
    vendor: chosen.vendor,
    minimumGuests: chosen.minimumGuests,
    // A far place's minimum stands beside the menu's own: the larger of the two is billed.
    ...(chosen.minimumSpend === null
      ? {}
      : { minimumSpend: foodMinimum(larger(chosen.minimumSpend, zoneMinimum)) }),
    ...(hours === null ? {} : { hours }),
    courses: chosen.courses.map((course) => ({
      name: course.name,
      choose: course.choose,
      eachGuest: course.eachGuest,
      dishes: course.dishes.map(dishTerms),
    })),
    addOns: [...(chosen.addOns ?? kitchen.addOns.keys())],
  };
}

function foodMinimum(amount: string): MinimumSpendTerms {
  return { amount, base: ['food'], class: 'food' };
}

function larger(one: string, other: string | undefined): string {
  return other !== undefined && new Decimal(other).gt(one) ? other : one;
}

function deliveryLabel(say: Say, place: string, zone: DeliveryZone | undefined): string {
  return zone ? say('offer.delivery.zone', { place, zone: zone.name }) : say('offer.delivery', { place });
}

function addOnTerms(id: string, kitchen: Kitchen): AddOnTerms[] {
  const addOn = kitchen.addOns.get(id);
  if (!addOn) throw new Error(`the kitchen has no add-on ${id}, though a proposal that was linked offers it`);
  const price = parseAddOnPrice(addOn.price, kitchen.currency);
  if (!price.ok) throw new Error(`the add-on ${id} was linked with a price that is none: ${price.what}`);
  const food = addOn.dishes.length === 0 ? {} : { dishes: addOn.dishes.map(dishTerms) };
  return [{ id, name: addOn.name, class: addOn.class, ...price.value, counts: addOn.counts, ...food }];
}

/** One entry for every role and style that its packages are served in; hours are the proposal's, else the role's. */
function staffTerms(proposal: Proposal, kitchen: Kitchen): StaffTerms[] {
  return [...kitchen.staff.values()].flatMap((role) => {
    const styles = [...new Set(proposal.packages.map((each) => each.style))];
    return styles.flatMap((style) => {
      const per = role.guestsEach.get(style);
      if (per === undefined) return [];
      return [
        {
          role: role.id,
          name: role.name,
          rate: role.price,
          hours: proposal.hours ?? role.hours,
          one: 1,
          per,
          counts: role.counts,
          atLeast: role.atLeast,
          packages: proposal.packages.filter((each) => each.style === style).map((each) => each.id),
        },
      ];
    });
  });
}
