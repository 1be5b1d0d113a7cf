import type { Ingredient } from '../engine/food/ingredient.ts';
import type { Recipe } from '../engine/food/recipe.ts';
import type { Kitchen } from '../engine/kitchen/kitchen.ts';
import type { Package } from '../engine/menu/package.ts';
import type { Proposal } from '../engine/menu/proposal.ts';
import type { SiteSheet } from '../engine/menu/site-sheet.ts';
import type { PriceList, Supplier } from '../engine/purchase/price-list.ts';
import type { PublishedCorrection } from '../schema/correction.ts';
import type { EventFact } from '../schema/event-fact.ts';
import type { Offer } from '../schema/offer.ts';
import type { Told } from '../schema/told.ts';
import type { Path } from './files/place-of.ts';
import type { Place } from './findings/finding.ts';
import type { ItemKey } from './item.ts';
import type { Photo } from './photo.ts';
import type { KeptPlanFile } from './read/kept-plans.ts';
import type { WrittenIn } from './read/numbered.ts';
import type { WrittenLot } from './read/stock.ts';

/** An accepted offer's history: its facts in the order they were written, the first always `accepted`. */
export interface EventRecord {
  readonly id: string;
  readonly facts: readonly EventFact[];
}

/**
 * Everything a caterer has written, linked and checked. What has an error, and what rests on it, is not in here
 * but in `held`, each with its reason; all else is whole.
 */
export interface Book {
  readonly kitchen: Kitchen;
  readonly suppliers: ReadonlyMap<string, Supplier>;
  /** The store-room that comes with Salver and the caterer's own, by id. */
  readonly ingredients: ReadonlyMap<string, Ingredient>;
  readonly recipes: ReadonlyMap<string, Recipe>;
  readonly packages: ReadonlyMap<string, Package>;
  readonly proposals: ReadonlyMap<string, Proposal>;
  /** The places where the kitchen works, by id. */
  readonly siteSheets: ReadonlyMap<string, SiteSheet>;
  readonly prices: PriceList;
  /** Where each pack of them stands, by `priceRowKey`. */
  readonly priceRows: ReadonlyMap<string, Place>;
  /** What is in stock, by ingredient; lots past their day included. */
  readonly stock: ReadonlyMap<string, readonly WrittenLot[]>;
  /** By proposal, revisions rising from 1. */
  readonly offers: ReadonlyMap<string, readonly Offer[]>;
  /** By event, whose id is its proposal's. */
  readonly events: ReadonlyMap<string, EventRecord>;
  /** The plans that events were cooked from, by event, in the order written; also of an event that cannot be read now. */
  readonly keptPlans: ReadonlyMap<string, readonly KeptPlanFile[]>;
  /** What clients were told of food that has changed since it was offered, by proposal, in the order written. */
  readonly told: ReadonlyMap<string, readonly Told[]>;
  /** What pages of issued offers were corrected by, by proposal, in the order written. */
  readonly corrections: ReadonlyMap<string, readonly (PublishedCorrection & WrittenIn)[]>;
  /** The cook's notes of each recipe, MDX, checked; without those that have errors. */
  readonly recipeBodies: ReadonlyMap<string, string>;
  /** The client's story of each package, MDX, checked. */
  readonly packageBodies: ReadonlyMap<string, string>;
  /** Pictures that texts may show, by their paths in the content folder. */
  readonly photos: ReadonlyMap<string, Photo>;
  /** SHA-256 of every text file by its path, but for offers, corrections and the inbox: of two Books with equal ones, both say the same. */
  readonly fileDigests: ReadonlyMap<string, string>;
  /** What is held back, by `recipe/herb-dressing`, `proposal/…`, and why, as part of a sentence. */
  readonly held: ReadonlyMap<string, string>;
  /** Where an item's key or value stands in its file; undefined where the Book never heard of the item. */
  placeOf(item: ItemKey, path?: Path, part?: 'key' | 'value'): Place | undefined;
}
