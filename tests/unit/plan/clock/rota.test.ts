import { describe, expect, test } from 'vitest';
import { minutes } from '../../../../src/engine/measure/duration.ts';
import { kitchenRota, type Rota } from '../../../../src/engine/plan/clock/rota.ts';
import { step } from '../builders.ts';
import { bake, clock, hot, planned } from './clocked.ts';

const stir = (id: string, hands: number) =>
  hot(id, [step('on the day', 'Stir', { station: 'stove', handsOn: minutes(hands) })], {
    stands: minutes(240),
  });

function named(found: ReturnType<typeof clock>, { cooks }: Rota): Record<string, readonly number[]> {
  return Object.fromEntries(
    found.steps.map(({ id, batch, number }) => [`${batch.recipe.id} ${number}`, cooks.get(id) ?? []]),
  );
}

describe('who does what', () => {
  test('the cook who filled the pie bakes it and stirs, while the other packs and loads', () => {
    const found = clock([planned('lunch', [bake('pie'), stir('soup', 40)])], { crew: { people: 2 } });
    // Pie 9:00–9:20 and 9:20–9:30, soup 9:50–10:30; packing 9:30–10:30, loading 10:30–11:00.
    expect(found.shown).toEqual(['pie 1 9:00–9:20', 'pie 2 9:20–10:30', 'soup 1 9:50–10:30']);
    const rota = kitchenRota(found);
    expect(named(found, rota)).toEqual({ 'pie 1': [1], 'pie 2': [1], 'soup 1': [1] });
    expect([...rota.packs, ...rota.loads]).toEqual([
      ['lunch', [2]],
      ['lunch', [2]],
    ]);
  });

  test('pies share an oven as it holds them, and a second one is heated only where both are in at once', () => {
    const keeps = { stands: minutes(240) };
    const one = clock([planned('lunch', [bake('pie', keeps), bake('tart', keeps)])]);
    const pieces = (found: ReturnType<typeof clock>) =>
      found.steps.flatMap(({ id }) => [...(kitchenRota(found).pieces.get(id) ?? [])]);
    expect(pieces(one)).toEqual([1, 1]);
    const two = clock([planned('lunch', [bake('pie', keeps), bake('tart', keeps)])], { ovens: 2 });
    expect(pieces(two).sort()).toEqual([1, 2]);
  });

  test('nobody is named where it is not stated who cooks', () => {
    const found = clock([planned('lunch', [bake('pie')])], { crew: null });
    const { people, cooks, packs, pieces } = kitchenRota(found);
    expect([people, cooks.size, packs.size, pieces.size]).toEqual([0, 0, 0, 1]);
  });

  test('what takes a skill goes to who has it, and they are left free for it', () => {
    const roll = hot('tart', [
      step('on the day', 'Roll', { station: 'cold', handsOn: minutes(30), skill: 'pastry' }),
    ]);
    const skills = new Map([['pastry', 1]]);
    // Soup 9:50–10:30, tart 10:00–10:30: whoever begins first would be Cook 1, who alone can roll.
    const found = clock([planned('lunch', [roll, stir('soup', 40)])], { crew: { people: 3, skills } });
    expect(found.shown).toEqual(['tart 1 10:00–10:30', 'soup 1 9:50–10:30']);
    const rota = kitchenRota(found);
    expect([...rota.skills]).toEqual([[1, ['pastry']]]);
    expect(named(found, rota)).toEqual({ 'tart 1': [1], 'soup 1': [3] });
    expect([...rota.packs]).toEqual([['lunch', [2]]]);
  });

  test('a cook who has gone home is given nothing after it', () => {
    // Two cook until noon for the lunch, one of them the whole day for the supper as well.
    const plans = [
      planned('lunch', [bake('pie'), stir('soup', 40)], {
        cooks: { people: 2, each: minutes(360), from: '5:00' },
      }),
      planned('supper', [bake('tart'), stir('stew', 90), stir('sauce', 30)], {
        serveAt: '18:00',
        cooks: { people: 1, each: minutes(720), from: '5:00' },
      }),
    ];
    const found = clock(plans);
    const { cooks, packs, loads } = kitchenRota(found);
    const gone = 11 * 60;
    const late = found.steps.filter(({ begins }) => begins >= gone);
    expect(late.length).toBeGreaterThan(2);
    const who = new Set(late.flatMap(({ id }) => [...(cooks.get(id) ?? [])]));
    expect([...who, ...(packs.get('supper') ?? []), ...(loads.get('supper') ?? [])]).toEqual(
      Array.from({ length: who.size + 2 }, () => [...who][0]),
    );
  });
});
