/** What a kitchen asks of a place before it cooks there, in the order in which it is walked through. */
export const SITE_QUESTIONS = [
  'power',
  'water',
  'cold space',
  'ovens',
  'burners',
  'cover',
  'surface',
  'stairs',
  'way in',
  'parking',
  'trash',
  'contact',
  'phone',
] as const;

export type SiteQuestion = (typeof SITE_QUESTIONS)[number];

/** What is known of a place where a kitchen works, written once and used for every event there. For the kitchen alone. */
export interface SiteSheet {
  readonly id: string;
  readonly name: string;
  readonly address?: string;
  /** Answers as written, by question, in the order of the questions; facts of the author's own after them. */
  readonly facts: ReadonlyMap<string, string>;
  readonly photos: readonly SitePhoto[];
  readonly notes?: string;
}

/** A picture of the place. */
export interface SitePhoto {
  /** Its path in the content folder. */
  readonly file: string;
  /** What it shows. */
  readonly shows: string;
}

type Facts = ReadonlyMap<string, string>;

/** What a client may read of a place: its name and address, and what the proposal itself states of it. */
export function publicVenue(sheet: SiteSheet | undefined, stated: Facts): Facts {
  return sheet ? stating(nameOf(sheet), stated) : stated;
}

/** All that is known of a place for the kitchen: what the proposal states wins over the sheet. */
export function siteFacts(sheet: SiteSheet | undefined, stated: Facts): Facts {
  return sheet ? stating([...nameOf(sheet), ...sheet.facts], stated) : stated;
}

/** The questions that nothing answers, in their order. */
export function notAsked(facts: Facts): SiteQuestion[] {
  const answered = new Set([...facts.keys()].map(plain));
  return SITE_QUESTIONS.filter((question) => !answered.has(question));
}

function nameOf({ name, address }: SiteSheet): [string, string][] {
  return [['name', name], ...(address === undefined ? [] : [['address', address] as [string, string]])];
}

function stating(known: readonly (readonly [string, string])[], stated: Facts): Facts {
  const facts = new Map(known);
  for (const [fact, text] of stated)
    facts.set([...facts.keys()].find((each) => plain(each) === plain(fact)) ?? fact, text);
  return facts;
}

function plain(fact: string): string {
  return fact.trim().toLowerCase();
}
