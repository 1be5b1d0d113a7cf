import { describe, expect, test } from 'vitest';
import { minutes } from '../../../../src/engine/measure/duration.ts';
import { parseHeldTemperature } from '../../../../src/engine/measure/temperature.ts';
import { throwAways, thrownAway } from '../../../../src/engine/plan/clock/throw-away.ts';
import { day, must, step } from '../builders.ts';
import { clock, hot, planned } from './clocked.ts';

/*
 * Food that stands neither hot nor cold may do so for 4 h from when it leaves the heat or the cold: FDA Food Code 2022,
 * 3-501.19(B). Packing ends and loading begins at 10:30, what is not hot is ready at 10:15; served 12:30 to 14:30.
 */
const room = (id: string, steps: ReturnType<typeof step>[], facts: object = {}) =>
  hot(id, steps, { hold: 'room', ...facts });
const fill = step('on the day', 'Fill', { station: 'cold', handsOn: minutes(30) });
const cookTo = must(parseHeldTemperature('165 °F'));
const bake = step('on the day', 'Bake', {
  station: 'oven',
  handsOn: minutes(10),
  unattended: minutes(60),
  cookTo,
});
const cut = step('on the day', 'Cut', { station: 'cold', handsOn: minutes(20) });

function thrown(of: ReturnType<typeof hot>, facts: Parameters<typeof planned>[2] = {}) {
  const plan = planned('lunch', [of], facts);
  const { steps, served, findings, time } = clock([plan]);
  return {
    foods: throwAways(plan, steps, served[0]!).map(({ left, by }) => `${time(left)} ${time(by)}`),
    findings: findings.filter(({ kind }) => kind === 'without control'),
  };
}

describe('food that time alone keeps safe', () => {
  test('leaves control when it is taken from the cold for its first step', () => {
    expect(thrown(room('sandwiches', [fill])).foods).toEqual(['9:45 13:45']);
  });

  test('leaves control when it comes off the heat, whatever is done to it then', () => {
    expect(thrown(room('tart', [fill, bake])).foods).toEqual(['10:15 14:15']);
    expect(thrown(room('tart', [fill, bake, cut])).foods).toEqual(['9:55 13:55']);
  });

  test('counts from the first load where the oven takes it in several', () => {
    // A pan a gallon, four pans an oven: 160 guests are ten pans, so three hours in three loads, the first out after one.
    const guests = { adults: 160, children: 0, vendors: 0, staff: 0 };
    const tart = room('tart', [bake], { pack: { cook: { container: 'pan' } } });
    const { steps } = clock([planned('lunch', [tart], { guests })]);
    const [{ handsOff, ends }] = steps as [(typeof steps)[number]];
    const [food] = thrown(tart, { guests }).foods;
    expect(ends - handsOff).toBeGreaterThan(60);
    expect(food).toMatch(new RegExp(`^${Math.floor((handsOff + 60) / 60)}:`));
  });

  test('is counted by its own steps alone, for its own event and in the kitchen', () => {
    // The other dish of the event, and the same sandwiches of an event that leaves an hour earlier, begin sooner.
    const sandwiches = room('sandwiches', [fill]);
    const early = hot('soup', [
      step('on the day', 'Boil', { station: 'stove', handsOn: minutes(240), cookTo }),
    ]);
    const lunch = planned('lunch', [sandwiches, early]);
    const brunch = planned('brunch', [room('rolls', [fill])], { serveAt: '10:30' });
    const { steps, served, time } = clock([lunch, brunch], { places: { cold: 2, stove: 2 } });
    const of = (id: string) => {
      const at = served.find(({ plan }) => plan.input.id === id)!;
      return throwAways(at.plan, steps, at).map(({ recipe, left }) => `${recipe.id} ${time(left)}`);
    };
    expect(of('lunch')).toEqual(['sandwiches 9:45']);
    expect(of('brunch')).toEqual(['rolls 7:45']);
  });

  test('leaves control at its first step there where all of it is made at the place', () => {
    const there = step('at serving', 'Cut', { station: 'cold', handsOn: minutes(20) });
    const { foods } = thrown(room('fruit', [there]));
    expect(foods).toEqual(['12:10 16:10']);
    // What is made in the kitchen and finished there has left the cold for packing, hours before.
    const slab = room('slab', [step('the day before', 'Make', { handsOn: minutes(30) }), there]);
    expect(thrown(slab).foods).toEqual(['9:30 13:30']);
  });

  test('of the steps that heat it the last counts, and of those that do not the first', () => {
    const simmer = step('on the day', 'Simmer', { station: 'stove', handsOn: minutes(15), cookTo });
    // Off the stove at 9:05, out of the oven at 10:15.
    expect(thrown(room('tart', [simmer, bake])).foods).toEqual(['10:15 14:15']);
    expect(thrown(room('sandwiches', [fill, cut])).foods).toEqual(['9:25 13:25']);
  });

  test('has the time of its recipe, and none where it is held', () => {
    const plan = planned('lunch', [room('tart', [fill]), room('rolls', [cut])]);
    const { steps, served } = clock([plan]);
    const foods = throwAways(plan, steps, served[0]!);
    expect(thrownAway(foods, { id: 'rolls' })).toBe(foods.find(({ recipe }) => recipe.id === 'rolls'));
    expect(thrownAway(foods, { id: 'rolls' })?.dish).toBe('rolls');
    expect(thrownAway(foods, { id: 'soup' })).toBeUndefined();
  });

  test('leaves control when packing begins where all is done on days before', () => {
    const slab = room('slab', [step('the day before', 'Make', { handsOn: minutes(30) })]);
    const plan = planned('lunch', [slab]);
    const { served, steps, time } = clock([plan], {}, day('2027-05-15'));
    expect(throwAways(plan, steps, served[0]!).map(({ left, by }) => [time(left), time(by)])).toEqual([
      ['9:30', '13:30'],
    ]);
  });

  test('is not what is held hot or cold, nor what is safe as it is', () => {
    expect(thrown(room('rolls', [fill], { temperatureControl: false })).foods).toEqual([]);
    expect(thrown(hot('salad', [fill], { hold: 'cold' })).foods).toEqual([]);
    expect(thrown(hot('pie', [fill, bake])).foods).toEqual([]);
  });

  test('is told where service goes on after it must be gone, and only there', () => {
    const away = (service: number) => ({
      away: { travel: minutes(30), setUp: minutes(60), service: minutes(service) },
    });
    const tart = room('tart', [fill, bake]);
    expect(thrown(tart).findings).toMatchObject([
      {
        event: 'lunch',
        end: 870,
        food: { left: 615, by: 855 },
        source: { values: { section: '3-501.19(B)' } },
      },
    ]);
    // To 14:15, the very minute.
    expect(thrown(tart, away(105)).findings).toEqual([]);
    expect(thrown(tart, away(106)).findings).toHaveLength(1);
    const { service: _, ...open } = away(0).away;
    expect(thrown(tart, { away: { ...open, service: undefined } }).findings).toEqual([]);
  });
});
