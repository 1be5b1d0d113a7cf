import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { ingredientSchema } from '../../../src/schema/ingredient.ts';
import { kitchenSchema } from '../../../src/schema/kitchen.ts';
import { packageSchema } from '../../../src/schema/package.ts';
import { proposalSchema } from '../../../src/schema/proposal.ts';
import { recipeSchema } from '../../../src/schema/recipe.ts';
import { supplierSchema } from '../../../src/schema/supplier.ts';

const SCHEMAS = {
  kitchenSchema,
  supplierSchema,
  ingredientSchema,
  recipeSchema,
  packageSchema,
  proposalSchema,
};

/** Every field of a schema by its path, with what is said of it. */
function meanings(schema: z.core.JSONSchema.JSONSchema, path = ''): [string, string | undefined][] {
  const children: [string, z.core.JSONSchema.JSONSchema][] = [
    ...Object.entries(schema.properties ?? {}).map(
      ([name, child]): [string, z.core.JSONSchema.JSONSchema] => [
        `${path}${name}`,
        child as z.core.JSONSchema.JSONSchema,
      ],
    ),
  ];
  const inner = [schema.additionalProperties, schema.items].filter((each) => typeof each === 'object');
  return [
    ...children.flatMap(([name, child]): [string, string | undefined][] => [
      [name, child.description],
      ...meanings(child, `${name} › `),
    ]),
    ...inner.flatMap((each) => meanings(each as z.core.JSONSchema.JSONSchema, path)),
    ...(schema.oneOf ?? schema.anyOf ?? []).flatMap((each) =>
      meanings(each as z.core.JSONSchema.JSONSchema, path),
    ),
  ];
}

describe('the fields of content files', () => {
  test.each(Object.entries(SCHEMAS))(
    '%s says what each of its fields means, and refuses others',
    (_name, schema) => {
      const json = z.toJSONSchema(schema, { unrepresentable: 'any' });
      const fields = meanings(json).filter(([name]) => !/(^|› )kind$/.test(name));
      expect(fields.length).toBeGreaterThan(8);
      expect(fields.filter(([, meaning]) => meaning === undefined || meaning.length < 10)).toEqual([]);
      expect(json.additionalProperties).toBe(false);
    },
  );

  test('an optional field says what holds without it', () => {
    const json = z.toJSONSchema(proposalSchema, { unrepresentable: 'any' });
    const { delivery } = json.properties ?? {};
    expect((delivery as { description: string }).description).toContain('default: the place’s');
  });
});

describe('shorthand', () => {
  test('is written out before validating, so that one slip has one message', () => {
    const recipe = recipeSchema.parse({
      name: 'Soup',
      makes: '40 servings, 2 gal',
      ingredients: { lentils: '4 lb', salt: { amount: '2 tbsp', note: 'coarse' } },
      steps: [{ do: 'Boil', station: 'stove' }],
      hold: 'hot',
      pack: 'tray',
    });
    expect(recipe.makes).toEqual(['40 servings', '2 gal']);
    expect(recipe.ingredients).toEqual({
      lentils: { amount: '4 lb' },
      salt: { amount: '2 tbsp', note: 'coarse' },
    });
    expect(recipe.pack).toEqual({ serve: 'tray' });
    const slip = recipeSchema.safeParse({ ...recipe, ingredients: { lentils: ['4 lb'] } });
    expect(slip.error?.issues).toHaveLength(1);
  });

  test('one price alone holds for any count, and a food-cost target is told by its field', () => {
    const price = (value: unknown) => packageSchema.shape.price.parse(value);
    expect(price('42.00')).toEqual({ kind: 'tiers', tiers: { '1+': '42.00' } });
    expect(price({ '20-49': '46.00' })).toEqual({ kind: 'tiers', tiers: { '20-49': '46.00' } });
    expect(price({ 'food cost': '30 %', for: '30, 60' })).toEqual({
      kind: 'food cost',
      'food cost': '30 %',
      for: ['30', '60'],
    });
  });
});
