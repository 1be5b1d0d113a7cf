import { areSame, type ContentText } from './files/content-texts.ts';
import { type ReadYaml, readYaml, type YamlReader } from './files/yaml-source.ts';
import { enter, type Ledger, openLedger } from './ledger.ts';
import { type MenusReader, type MenuTexts, type ReadMenus, readMenus } from './read/menus.ts';

/**
 * What is kept from one reading of a folder to the next, so that after an edit only what rests on it is read again:
 * of each file what came of its text, and the menus while none of their files changes. It is all of it given out again
 * and never changed by anybody.
 */
export interface KeptReading {
  readonly yaml: YamlReader;
  readonly menus: MenusReader;
}

/** Nothing read yet. */
export function keepReading(): KeptReading {
  return { yaml: keptYaml(), menus: keptMenus() };
}

function keptYaml(): YamlReader {
  const kept = new Map<string, { text: string; firstLine: number; read: ReadYaml }>();
  return (file, text, firstLine = 1) => {
    const last = kept.get(file);
    if (last?.text === text && last.firstLine === firstLine) return last.read;
    const read = readYaml(file, text, firstLine);
    kept.set(file, { text, firstLine, read });
    return read;
  };
}

function keptMenus(): MenusReader {
  let last: { from: ContentText[]; pictures: string; part: Ledger; menus: ReadMenus | undefined } | undefined;
  return (ledger, texts, pictures) => {
    const from = Object.values(texts satisfies MenuTexts).flat() as ContentText[];
    const shown = [...pictures].join('\n');
    if (!last || last.pictures !== shown || !areSame(last.from, from)) {
      const part = openLedger(ledger.yaml);
      const menus = readMenus(part, texts, pictures);
      last = { from, pictures: shown, part, menus };
    }
    enter(ledger, last.part);
    return last.menus;
  };
}
