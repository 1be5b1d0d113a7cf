import { describe, expect, test } from 'vitest';
import type { Equipment } from '../../../src/engine/kitchen/kitchen.ts';
import { minutes } from '../../../src/engine/measure/duration.ts';
import type { Crew } from '../../../src/engine/menu/crew.ts';
import { dayBatches } from '../../../src/engine/plan/days/day-batches.ts';
import { dayWork } from '../../../src/engine/plan/days/day-work.ts';
import type { WorkKitchen } from '../../../src/engine/plan/days/work-days.ts';
import type { EventInput } from '../../../src/engine/plan/event-input.ts';
import { planEvent } from '../../../src/engine/plan/plan-event.ts';
import { day, dish, event, food, kitchen, line, prices, recipe, step } from './builders.ts';

const DATE = day('2027-05-15');
const beans = food('beans');
const bake = (id: string) =>
  recipe(id, '1 gal', [line(beans, '1 lb')], {
    steps: [
      step('on the day', 'Fill', { station: 'cold', handsOn: minutes(20) }),
      step('on the day', 'Bake', { station: 'oven', handsOn: minutes(10), unattended: minutes(60) }),
    ],
  });
const [pie, tart] = [bake('pie'), bake('tart')];
const oven: Equipment = {
  id: 'oven',
  name: 'Oven',
  count: 1,
  holds: [{ container: 'pan', count: 4 }],
  station: 'oven',
};
const kitchenWith = (crew?: Partial<Crew>): WorkKitchen => ({
  equipment: new Map([['oven', oven]]),
  containers: kitchen([['pan', '1 gal', '1']]).containers,
  crew: crew && { people: 4, each: minutes(480), from: '7:00', ...crew },
  day: { pack: minutes(60), load: minutes(30), clear: minutes(75) },
});

function plan(id: string, of: typeof pie, facts: Partial<EventInput> = {}) {
  const guests = { adults: 16, children: 0, vendors: 0, staff: 0 };
  const dishes = [dish(of, '8 fl oz per guest')];
  return planEvent(event(dishes, { id, occasion: id, guests, date: DATE, ...facts }), kitchen(), prices());
}

function work(plans: ReturnType<typeof plan>[], packAt: Record<string, number>, of = kitchenWith({})) {
  const found = dayWork(dayBatches(plans, DATE), DATE, new Map(Object.entries(packAt)), of);
  const times = found.tasks.map(({ batch, number, begins, ends }) => [batch.recipe.id, number, begins, ends]);
  return { ...found, times };
}

describe('the work of a day over its events', () => {
  test('ends for each event when its packing begins', () => {
    // Fill 20 min, bake 10 + 60 min: 90 min before 9:00 (540) and before 14:00 (840).
    const { times, clashes } = work([plan('lunch', pie), plan('dinner', tart)], { lunch: 540, dinner: 840 });
    expect(times).toEqual([
      ['pie', 1, 450, 470],
      ['pie', 2, 470, 540],
      ['tart', 1, 750, 770],
      ['tart', 2, 770, 840],
    ]);
    expect(clashes).toEqual([]);
  });

  test('is begun earlier for the later event where the one oven is taken', () => {
    // The pie is in the oven from 8:00 to 9:00; the tart wants it from 8:30 to 9:30, so it goes in at 7:00, 90 min before.
    const { times, shifts, clashes } = work([plan('lunch', pie), plan('dinner', tart)], {
      lunch: 540,
      dinner: 570,
    });
    expect(shifts).toEqual([
      { events: ['lunch'], moved: 0 },
      { events: ['dinner'], moved: -90 },
    ]);
    expect(times.filter(([id]) => id === 'tart')).toEqual([
      ['tart', 1, 390, 410],
      ['tart', 2, 410, 480],
    ]);
    expect(clashes).toEqual([]);
  });

  test('names what is asked for too often where no other time helps', () => {
    // In the oven from 0:30 to 1:30 and from 0:40 to 1:40; nothing is begun before midnight, so 10 minutes are left.
    const { clashes, shifts } = work([plan('lunch', pie), plan('dinner', tart)], { lunch: 90, dinner: 100 });
    expect(shifts.map(({ moved }) => moved)).toEqual([0, 0]);
    expect(clashes).toEqual([
      { gear: oven, from: 40, until: 90, asked: 2, has: 1, what: ['pie: Bake', 'tart: Bake'] },
    ]);
  });

  test('for another day begins with the crew, and waits for the oven within the shift', () => {
    const before = (id: string) => ({
      ...bake(id),
      steps: bake(id).steps.map((each) => ({ ...each, when: { daysBefore: 1, atServing: false } })),
    });
    const plans = [plan('today', pie), plan('tomorrow', before('tart'), { date: day('2027-05-16') })];
    // The pie is in the oven from 7:30 to 8:30; the tart would be from 7:30 on, and goes in at 8:30.
    const { times, shifts } = work(plans, { today: 510 });
    expect(shifts[1]).toEqual({ events: ['tomorrow'], moved: 60 });
    expect(times.at(-1)).toEqual(['tart', 2, 500, 570]);
    // A shift of 90 minutes leaves no time to wait.
    const short = work(plans, { today: 510 }, kitchenWith({ each: minutes(90) }));
    expect(short.clashes.map(({ gear, from, until }) => [gear?.id, from, until])).toEqual([
      ['oven', 450, 510],
    ]);
  });

  test('of one recipe for two events is done once, in time for the first, with the loads of both', () => {
    // 16 × 8 fl oz = 1 gal each: 2 pans together; hands-on as if each were made by itself.
    const { tasks, times, gear } = work([plan('lunch', pie), plan('dinner', pie)], {
      lunch: 540,
      dinner: 840,
    });
    expect(times).toEqual([
      ['pie', 1, 420, 460],
      ['pie', 2, 460, 540],
    ]);
    expect(tasks.map(({ handsOn }) => handsOn)).toEqual([40, 20]);
    expect(tasks[1]?.load).toMatchObject({ containers: { name: 'pan', count: 2 }, loads: 1 });
    expect(gear.map(({ equipment, busy }) => [equipment.id, busy])).toEqual([['oven', 60]]);
  });

  test('tells of a part that is made together and comes too late for what it goes into', () => {
    const cream = recipe('cream', '1 gal', [line(beans, '1 lb')], {
      steps: [step('on the day', 'Whip', { handsOn: minutes(30) })],
    });
    const cake = recipe('cake', '1 gal', [line(cream, '1 qt')], {
      steps: [step('on the day', 'Fill', { handsOn: minutes(30), unattended: minutes(600) })],
    });
    const [lunch, dinner] = [plan('lunch', cream), plan('dinner', cake)];
    // The cream ends at 9:00 for lunch; the cake has to be begun at 3:30 to be ready at 14:00.
    const { late } = work([lunch, dinner], { lunch: 540, dinner: 840 });
    expect(late.map(({ part, into }) => [part.batch.recipe.id, part.ends, into.begins])).toEqual([
      ['cream', 540, 210],
    ]);
  });

  test('leaves out what is done at serving, and knows no hour where nobody has said when the crew begins', () => {
    const served = recipe('soup', '1 gal', [line(beans, '1 lb')], { steps: [step('at serving', 'Ladle')] });
    expect(work([plan('lunch', served)], { lunch: 540 }).tasks).toEqual([]);
    const early = recipe('bread', '1 gal', [], { steps: [step('the day before', 'Knead')] });
    const tomorrow = [plan('tomorrow', early, { date: day('2027-05-16') })];
    const { tasks } = work(tomorrow, {}, kitchenWith({ from: undefined }));
    expect(tasks.map(({ begins, clock }) => [begins, clock])).toEqual([[0, false]]);
  });
});
