import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Finding } from '../book/findings/finding.ts';
import { replaceText } from '../files/replace-text.ts';

/** What came of rewriting: how many names in which files, and the findings that only a hand can put right. */
export interface Rewritten {
  /** `kitchen.yaml: “e-mail” is now “email” (line 7)` */
  readonly lines: readonly string[];
  readonly left: readonly Finding[];
}

/**
 * Writes today's names where content files have older ones; all else stays to the letter. Each file is replaced whole or
 * not at all. A name in quotation marks, or one that is no longer where it was read, is left to its author.
 */
export async function rewriteNames(contentDir: string, findings: readonly Finding[]): Promise<Rewritten> {
  const lines: string[] = [];
  const left = findings.filter(({ rewrite }) => !rewrite);
  const byFile = Map.groupBy(
    findings.filter(({ rewrite }) => rewrite),
    ({ place }) => place.file,
  );
  for (const [file, older] of byFile) {
    const path = join(contentDir, file);
    const before = await readFile(path, 'utf8');
    const rows = before.split('\n');
    for (const each of older) {
      const { line, column } = each.place;
      const { from, to } = each.rewrite as { from: string; to: string };
      const row = rows[line - 1] ?? '';
      const start = column - 1 + (line === 1 && row.startsWith('\uFEFF') ? 1 : 0);
      if (!row.startsWith(`${from}:`, start)) {
        left.push(each);
        continue;
      }
      rows[line - 1] = row.slice(0, start) + to + row.slice(start + from.length);
      lines.push(`${file}: “${from}” is now “${to}” (line ${line})`);
    }
    const after = rows.join('\n');
    if (after !== before) await replaceText(path, after);
  }
  return { lines, left };
}
