import type { Equipment } from '../../engine/kitchen/kitchen.ts';
import { durationText, minutes } from '../../engine/measure/duration.ts';
import type { MeasureSystem } from '../../engine/measure/units.ts';
import type { ClockFinding, WayOut } from '../../engine/plan/clock/clock-finding.ts';
import type { Say } from '../../words/words-in.ts';
import { clockOf } from './clock-text.ts';
import { chillerFinding } from './cooling-words.ts';
import { dateText } from './date-text.ts';
import { holdingFinding } from './holding-words.ts';
import { soldShortText } from './hours-words.ts';
import { skillText } from './skill-text.ts';
import { statementsIn } from './statement-text.ts';

/** What words about the clock need besides the figures. */
export interface ClockWords {
  readonly say: Say;
  readonly locale: string;
  /** In which scale temperatures are written. */
  readonly system: MeasureSystem;
  readonly stations: ReadonlyMap<string, string>;
  readonly equipment: ReadonlyMap<string, Pick<Equipment, 'name' | 'keeps'>>;
}

/** What of the clock does not fit, as a plan lists it. */
export function clockFinding(
  finding: ClockFinding,
  words: ClockWords,
): { readonly about: string; readonly what: string; readonly wayOut: string } {
  const { say, locale } = words;
  const day = dateText(finding.date, locale);
  switch (finding.kind) {
    case 'before crew':
      return {
        about: say('clock.about.start'),
        what: say('clock.before-crew', { day, time: clockOf(finding.at), crew: clockOf(finding.crew) }),
        wayOut: waysText(finding.ways, words),
      };
    case 'after crew':
      return {
        about: say('clock.about.end'),
        what: say('clock.after-crew', { day, time: clockOf(finding.at), crew: clockOf(finding.crew) }),
        wayOut: say('clock.after-crew-way', { time: clockOf(finding.at) }),
      };
    case 'long day': {
      const { from, until, each } = finding;
      const time = durationText(minutes(until - from));
      const spoken = { day, from: clockOf(from), until: clockOf(until), time };
      return {
        about: say('clock.about.hands'),
        what: say('clock.long-day', { ...spoken, each: durationText(minutes(each)) }),
        wayOut: say('clock.long-day-way'),
      };
    }
    case 'clash': {
      const { of, from, until, asked, has, what } = finding.clash;
      const spoken = {
        day,
        from: clockOf(from),
        until: clockOf(until),
        n: asked,
        has,
        what: what.join('; '),
      };
      return {
        about: of.kind === 'equipment' ? of.equipment.name : say('clock.about.hands'),
        what:
          of.kind === 'skill'
            ? say('clock.clash-skill', { ...spoken, skill: skillText(of.skill) })
            : say('clock.clash', spoken),
        wayOut: waysText(finding.ways, words),
      };
    }
    case 'chiller': {
      const tried = finding.ways.map((way) => wayText(way, words)).join('; ');
      return chillerFinding(finding, tried, words);
    }
    case 'holding': {
      const tried = finding.ways.map((way) => wayText(way, words)).join('; ');
      return holdingFinding(finding, tried, words);
    }
    case 'vehicles': {
      const { name, from, until, asked, has, occasions } = finding;
      const names = new Intl.ListFormat(locale, { type: 'conjunction' }).format(occasions);
      const hours = { from: clockOf(from), until: clockOf(until) };
      return {
        about: say('clock.about.vehicles'),
        what:
          name === undefined
            ? say('clock.vehicles', { day, ...hours, n: asked, has, occasions: names })
            : say('clock.vehicles-kind', { day, ...hours, n: asked, has, occasions: names, name }),
        wayOut: waysText(finding.ways, words),
      };
    }
    case 'waits': {
      const { dish, from, until, stands = 0 } = finding.waiting;
      return {
        about: dish.dish.name,
        what: say('clock.waits', {
          from: clockOf(from),
          until: clockOf(until),
          time: durationText(minutes(until - from)),
          stands: durationText(minutes(stands)),
        }),
        wayOut: finding.waiting.there
          ? finding.ways.length > 0
            ? waysText(finding.ways, words)
            : say('clock.waits-there-way')
          : say('clock.waits-way'),
      };
    }
    case 'without control': {
      const { food, end, source } = finding;
      const spoken = {
        left: clockOf(food.left),
        by: clockOf(food.by),
        end: clockOf(end),
        source: statementsIn(locale)(source),
      };
      return {
        about: food.dish ?? food.recipe.name,
        what: say('clock.without-control', { ...spoken, within: durationText(minutes(food.by - food.left)) }),
        wayOut: say('clock.without-control-way', { ...spoken, defers: say('safety.defers') }),
      };
    }
    case 'sold short': {
      return {
        about: say('clock.about.hours'),
        what: soldShortText(finding.roles, say),
        wayOut: say('clock.sold-short-way'),
      };
    }
    case 'place':
      return placeFinding(finding, say);
  }
}

function placeFinding(
  { minutes: length, arrive, serve, cooks, moreCooks }: Extract<ClockFinding, { kind: 'place' }>,
  say: Say,
) {
  const time = durationText(minutes(length));
  const spoken = { time, arrive: clockOf(arrive), serve: clockOf(serve) };
  return {
    about: say('clock.about.place'),
    what:
      cooks === undefined ? say('clock.place', spoken) : say('clock.place-cooks', { ...spoken, n: cooks }),
    wayOut:
      moreCooks === undefined
        ? say('clock.place-way', { time })
        : say('clock.place-way-cooks', { n: moreCooks, time }),
  };
}

/** Ways out that were tried, `what works: one more person from 07:00 to 12:00; …`. */
function waysText(ways: readonly WayOut[], words: ClockWords): string {
  const { say, locale } = words;
  if (ways.length === 0) return say('clock.no-way');
  const list = ways.map((way) => wayText(way, words));
  return say('clock.tried', { ways: new Intl.ListFormat(locale, { type: 'disjunction' }).format(list) });
}

function wayText(way: WayOut, { say, stations, locale }: ClockWords): string {
  switch (way.kind) {
    case 'people': {
      const hours = { from: clockOf(way.from), until: clockOf(way.until) };
      return way.skill === undefined
        ? say('clock.way.people', hours)
        : say('clock.way.people-skill', { ...hours, skill: skillText(way.skill) });
    }
    case 'equipment':
      return say('clock.way.equipment', { equipment: way.name });
    case 'cook there':
      return say('clock.way.cook-there');
    case 'station':
      return say('clock.way.station', { station: stations.get(way.station) ?? way.station });
    case 'vehicle':
      return way.name === undefined
        ? say('clock.way.vehicle', { n: way.more })
        : say('clock.way.vehicle-kind', { n: way.more, name: way.name });
    case 'another vehicle':
      return say('clock.way.another-vehicle', { occasion: way.occasion });
    case 'comes back': {
      const occasions = new Intl.ListFormat(locale, { type: 'conjunction' }).format(way.occasions);
      return say('clock.way.comes-back', { occasions });
    }
    case 'truck':
      return say('clock.way.truck', { occasion: way.occasion, time: clockOf(way.at) });
    case 'leave early':
      return say('clock.way.leave-early', { occasion: way.occasion, time: clockOf(way.at) });
    case 'come':
      return say('clock.way.come', { time: clockOf(way.at) });
    case 'day before': {
      const recipes = new Intl.ListFormat(locale, { type: 'conjunction' }).format(way.recipes);
      return say('clock.way.day-before', { recipes });
    }
  }
}
