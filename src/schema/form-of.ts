import type { z } from 'zod';
import type { Fixed } from './fixed.ts';

/** True where two types are the same, optional fields included; not merely where one may stand for the other. */
type Same<A, B> = (<T>() => T extends A ? 1 : 2) extends <T>() => T extends B ? 1 : 2 ? true : false;

/**
 * The schema of a type that the engine declares, which knows no zod. It compiles only where what the schema reads is
 * that type exactly: no field missing, none besides, none optional in one alone, no value more or fewer.
 */
export function formOf<T>() {
  return <S extends z.ZodType>(
    schema: Same<Fixed<z.output<S>>, Fixed<T>> extends true ? S : ['reads something else than', T],
  ): z.ZodType<T> => schema as S as unknown as z.ZodType<T>;
}
