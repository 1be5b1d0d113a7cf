import { connect } from 'node:net';

/** An answer as it came over the wire. */
export interface RawAnswer {
  /** 0 where the server hung up without one. */
  readonly status: number;
  /** By lower-case name; the last of several. */
  readonly headers: Readonly<Record<string, string>>;
  readonly body: string;
}

/**
 * Sends exactly these bytes to a port of this machine and reads until the server hangs up: what fetch would tidy
 * up on the way (`..`, odd methods, absolute addresses) arrives as it is written.
 */
export function sendRaw(port: number, request: string): Promise<RawAnswer> {
  return new Promise((done, fail) => {
    const chunks: Buffer[] = [];
    const socket = connect(port, '127.0.0.1', () => socket.write(request, 'latin1'));
    socket.on('data', (chunk: Buffer) => chunks.push(chunk));
    socket.on('error', (error: NodeJS.ErrnoException) =>
      error.code === 'ECONNRESET' ? undefined : fail(error),
    );
    socket.on('close', () => done(understood(Buffer.concat(chunks).toString('utf8'))));
  });
}

/** A request line with the headers that end the connection after the answer. */
export function request(line: string, host: string, headers: readonly string[] = []): string {
  return `${[`${line} HTTP/1.1`, `Host: ${host}`, 'Connection: close', ...headers].join('\r\n')}\r\n\r\n`;
}

function understood(text: string): RawAnswer {
  const end = text.indexOf('\r\n\r\n');
  const [first = '', ...lines] = text.slice(0, end === -1 ? text.length : end).split('\r\n');
  const headers = Object.fromEntries(
    lines.map((line) => {
      const colon = line.indexOf(':');
      return [line.slice(0, colon).toLowerCase(), line.slice(colon + 1).trim()];
    }),
  );
  return { status: Number(first.split(' ')[1] ?? 0), headers, body: end === -1 ? '' : text.slice(end + 4) };
}
