import { z } from 'zod';
import type { Path } from '../../files/place-of.ts';

/** What a schema says of the field at a path: its meaning, an example, and the fields inside it. */
export interface KnownField {
  readonly meaning: string | undefined;
  readonly example: string | undefined;
  /** Names of its own fields; empty where it is no mapping with known fields. */
  readonly fields: readonly string[];
}

/** What `text-fields.ts` tells the registry of a field. */
interface Meta {
  readonly description?: string;
  readonly examples?: readonly unknown[];
}

/** Looks a field up in a schema; where the path leads out of the schema, nothing is known of it. */
export function knownField(schema: z.core.$ZodType, path: Path): KnownField {
  let [at] = layers(schema).slice(-1);
  let meta = metaOf(schema);
  for (const step of path) {
    const inner = at && child(at, step);
    if (!inner) return { meaning: undefined, example: undefined, fields: [] };
    meta = metaOf(inner);
    [at] = layers(inner).slice(-1);
  }
  return {
    meaning: meta?.description,
    example: typeof meta?.examples?.[0] === 'string' ? meta.examples[0] : undefined,
    fields: at ? fieldsOf(at) : [],
  };
}

/** A schema and what it wraps: optional fields, and mappings whose shorthand is written out first. */
function layers(schema: z.core.$ZodType): z.core.$ZodType[] {
  const found = [schema];
  for (;;) {
    const { def } = (found.at(-1) as z.core.$ZodTypes)._zod;
    if (def.type === 'optional') found.push(def.innerType);
    else if (def.type === 'pipe') found.push(def.out);
    else return found;
  }
}

function metaOf(schema: z.core.$ZodType): Meta | undefined {
  for (const layer of layers(schema)) {
    const meta = z.globalRegistry.get(layer);
    if (meta) return meta as Meta;
  }
  return undefined;
}

function child(schema: z.core.$ZodType, step: string | number): z.core.$ZodType | undefined {
  const { def } = (schema as z.core.$ZodTypes)._zod;
  if (def.type === 'object') return Object.hasOwn(def.shape, step) ? def.shape[step] : undefined;
  if (def.type === 'record') return def.valueType;
  if (def.type === 'array') return def.element;
  if (def.type === 'union') {
    for (const option of def.options) {
      const inner = child(layers(option).at(-1) ?? option, step);
      if (inner) return inner;
    }
  }
  return undefined;
}

function fieldsOf(schema: z.core.$ZodType): string[] {
  const { def } = (schema as z.core.$ZodTypes)._zod;
  if (def.type === 'object') return Object.keys(def.shape);
  if (def.type === 'union') return def.options.flatMap((option) => fieldsOf(layers(option).at(-1) ?? option));
  return [];
}
