import { Ajv2020 } from 'ajv/dist/2020.js';
import { beforeAll, describe, expect, test } from 'vitest';
import { type PrepPlanDocument, prepPlanJsonSchema } from '../../../src/exports/form/prep-plan.ts';
import { demoPlans } from './demo-plans.ts';

describe('the published form of a prep plan', () => {
  const schema = prepPlanJsonSchema();
  // An independent reader of JSON Schema, strict: a keyword or form it does not know fails.
  const valid = new Ajv2020({ strict: true, allErrors: true }).compile(schema);
  let plans: PrepPlanDocument[];

  beforeAll(async () => {
    plans = await demoPlans();
  });

  test('every plan of the demo keeps to it, by another program’s judgement', () => {
    expect(plans.length).toBeGreaterThanOrEqual(3);
    for (const plan of plans) {
      valid(JSON.parse(JSON.stringify(plan)));
      expect(valid.errors ?? []).toEqual([]);
    }
  });

  test('a figure that is missing, of another kind or unknown is refused', () => {
    const [plan] = plans;
    const { foodUsed: _, ...less } = plan!;
    expect(valid(less)).toBe(false);
    expect(valid({ ...plan, deliveryFees: 12 })).toBe(false);
    expect(valid({ ...plan, margin: '1.00' })).toBe(false);
    expect(valid({ ...plan, $schema: '../../prep-plan.schema.json' })).toBe(true);
  });

  test('every field says what it is', () => {
    const unsaid: string[] = [];
    const visit = (node: unknown, path: string): void => {
      if (typeof node !== 'object' || node === null) return;
      for (const [key, value] of Object.entries(node)) {
        if (key === 'properties')
          for (const [name, field] of Object.entries(value as Record<string, Record<string, unknown>>))
            if (!said(field)) unsaid.push(`${path}.${name}`);
        visit(value, `${path}.${key}`);
      }
    };
    /** Its own words, or those of the form it refers to. */
    const said = (field: Record<string, unknown>): boolean => {
      if (typeof field.description === 'string' && field.description !== '') return true;
      if (typeof field.$ref === 'string') {
        const { $defs } = schema as { $defs: Record<string, Record<string, unknown>> };
        return said($defs[field.$ref.split('/').at(-1)!]!);
      }
      return Array.isArray(field.anyOf) && field.anyOf.some((each) => said(each as Record<string, unknown>));
    };
    visit(schema, '$');
    expect(unsaid).toEqual([]);
    // The check itself finds a field without words.
    expect(said({ type: 'string' })).toBe(false);
  });
});
