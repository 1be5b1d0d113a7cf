import allergensGB from './en-GB/allergens.json' with { type: 'json' };
import changesGB from './en-GB/changes.json' with { type: 'json' };
import eventGB from './en-GB/event.json' with { type: 'json' };
import foundGB from './en-GB/found.json' with { type: 'json' };
import frontGB from './en-GB/front.json' with { type: 'json' };
import moneyGB from './en-GB/money.json' with { type: 'json' };
import pageGB from './en-GB/page.json' with { type: 'json' };
import receiverGB from './en-GB/receiver.json' with { type: 'json' };
import scriptGB from './en-GB/script.json' with { type: 'json' };
import siteGB from './en-GB/site.json' with { type: 'json' };
import terminalGB from './en-GB/terminal.json' with { type: 'json' };
import termsGB from './en-GB/terms.json' with { type: 'json' };
import alerts from './en-US/alerts.json' with { type: 'json' };
import allergens from './en-US/allergens.json' with { type: 'json' };
import answers from './en-US/answers.json' with { type: 'json' };
import bill from './en-US/bill.json' with { type: 'json' };
import cards from './en-US/cards.json' with { type: 'json' };
import carriers from './en-US/carriers.json' with { type: 'json' };
import cautions from './en-US/cautions.json' with { type: 'json' };
import changes from './en-US/changes.json' with { type: 'json' };
import clock from './en-US/clock.json' with { type: 'json' };
import cost from './en-US/cost.json' with { type: 'json' };
import csv from './en-US/csv.json' with { type: 'json' };
import day from './en-US/day.json' with { type: 'json' };
import dishes from './en-US/dishes.json' with { type: 'json' };
import event from './en-US/event.json' with { type: 'json' };
import form from './en-US/form.json' with { type: 'json' };
import found from './en-US/found.json' with { type: 'json' };
import front from './en-US/front.json' with { type: 'json' };
import guests from './en-US/guests.json' with { type: 'json' };
import invoice from './en-US/invoice.json' with { type: 'json' };
import kit from './en-US/kit.json' with { type: 'json' };
import labels from './en-US/labels.json' with { type: 'json' };
import leader from './en-US/leader.json' with { type: 'json' };
import leftovers from './en-US/leftovers.json' with { type: 'json' };
import lists from './en-US/lists.json' with { type: 'json' };
import mail from './en-US/mail.json' with { type: 'json' };
import money from './en-US/money.json' with { type: 'json' };
import offer from './en-US/offer.json' with { type: 'json' };
import page from './en-US/page.json' with { type: 'json' };
import paper from './en-US/paper.json' with { type: 'json' };
import plan from './en-US/plan.json' with { type: 'json' };
import power from './en-US/power.json' with { type: 'json' };
import receiver from './en-US/receiver.json' with { type: 'json' };
import returns from './en-US/returns.json' with { type: 'json' };
import safety from './en-US/safety.json' with { type: 'json' };
import script from './en-US/script.json' with { type: 'json' };
import server from './en-US/server.json' with { type: 'json' };
import site from './en-US/site.json' with { type: 'json' };
import terminal from './en-US/terminal.json' with { type: 'json' };
import terms from './en-US/terms.json' with { type: 'json' };
import ticks from './en-US/ticks.json' with { type: 'json' };
import waste from './en-US/waste.json' with { type: 'json' };
import why from './en-US/why.json' with { type: 'json' };
import type { Language } from './languages.ts';

/**
 * All that Salver says to clients, guests and crews, by area: ICU messages, one file for each area. A new language is a
 * folder of such files, its tag in `languages.ts` and a line below.
 */
const enUS = {
  alerts,
  allergens,
  answers,
  bill,
  cards,
  carriers,
  cautions,
  changes,
  clock,
  cost,
  csv,
  day,
  dishes,
  event,
  form,
  found,
  front,
  guests,
  invoice,
  kit,
  labels,
  leader,
  leftovers,
  lists,
  mail,
  money,
  offer,
  page,
  paper,
  plan,
  power,
  receiver,
  returns,
  safety,
  script,
  server,
  site,
  terminal,
  terms,
  waste,
  ticks,
  why,
};

type Areas = typeof enUS;

/** A message: its area, a dot, and its name there. */
export type WordKey = {
  [Area in keyof Areas & string]: `${Area}.${keyof Areas[Area] & string}`;
}[keyof Areas & string];

/** By language. One that has not every message takes the rest from American English. */
export const CATALOGUES: Readonly<
  Record<Language, { readonly [Area in keyof Areas]?: Partial<Areas[Area]> }>
> = {
  'en-US': enUS,
  'en-GB': {
    allergens: allergensGB,
    changes: changesGB,
    found: foundGB,
    front: frontGB,
    event: eventGB,
    money: moneyGB,
    page: pageGB,
    receiver: receiverGB,
    script: scriptGB,
    site: siteGB,
    terminal: terminalGB,
    terms: termsGB,
  },
};
