import { deflateRawSync } from 'node:zlib';
import jsQrModule from 'jsqr';
import { describe, expect, it } from 'vitest';
import { setAt } from '../../geometry/fields.ts';
import { jobInLink, linkTo, longestLink } from '../../src/app/share/link.ts';
import { mostBytes, qrOf } from '../../src/app/share/qr.ts';
import { starters } from '../../src/jobs/index.ts';
import { seeded } from '../seeded.ts';
import { jobOf } from '../solved.ts';

// A CommonJS module, whose function is its default's default for some loaders.
const jsQr = 'default' in jsQrModule ? (jsQrModule.default as unknown as typeof jsQrModule) : jsQrModule;

const page = 'https://example.org/bench/#old';
const fragment = (address: string) => new URL(address).hash;
const linkOf = async (job: Parameters<typeof linkTo>[0]) => {
  const link = await linkTo(job, page);
  if (!link.ok) throw new Error(`the link has ${link.length} characters`);
  return link.address;
};
const says = async (hash: string) => {
  const read = await jobInLink(hash);
  return read.ok ? 'read' : (read.problems[0]?.says ?? '');
};

describe('a job in a link', () => {
  it.each(starters)('comes back as it is: $id', async ({ text }) => {
    const job = jobOf(text);
    const address = await linkOf(job);
    expect(address.startsWith('https://example.org/bench/#job=')).toBe(true);
    expect(await jobInLink(fragment(address))).toEqual({ ok: true, job, unknown: [] });
  });

  it('stands behind the #, in letters that any program takes for an address', async () => {
    const job = setAt(jobOf(starters[0]?.text ?? ''), 'name', 'Ärger & <Leim> “½” \u{1f3b8}');
    const address = await linkOf(job);
    expect(address).toMatch(/^[\x21-\x7e]+$/);
    expect(new URL(address).search).toBe('');
    expect((await jobInLink(fragment(address))) as unknown).toMatchObject({ ok: true, job: { name: job.name } });
  });

  it('that is too long is refused with its length', async () => {
    const job = jobOf(starters[0]?.text ?? '');
    // Letters that no packing makes shorter.
    const { even } = seeded(7);
    const noise = Array.from({ length: 9000 }, () => String.fromCharCode(Math.floor(even(0x4e00, 0x9fff))));
    const link = await linkTo({ ...job, workshop: noise.join('') } as typeof job, page);
    expect(link).toEqual({ ok: false, length: expect.any(Number) });
    expect((link as { length: number }).length).toBeGreaterThan(longestLink);
  });

  it('that is cut, changed, or something else is refused in words', async () => {
    const whole = fragment(await linkOf(jobOf(starters[1]?.text ?? '')));
    expect(await says(whole.slice(0, -40))).toMatch(/cut short or was changed|not JSON/);
    expect(await says(`${whole}"<script>`)).toContain('characters that no link');
    expect(await says('#job=')).toContain('cut short');
    expect(await says('#job=AAAAA')).toContain('cut short');
    expect(await says('#other')).toContain('holds no job');
    expect(await says(`#job=${'A'.repeat(longestLink)}`)).toContain('more than the');
    const plain = (bytes: string | Uint8Array) => says(`#job=${deflateRawSync(bytes).toString('base64url')}`);
    expect(await plain('{"format":"other"}')).toContain('no Sagitta job');
    expect(await plain(Uint8Array.of(0xff, 0xfe, 0x00))).toContain('does not hold a text');
  });

  it('that would unpack to gigabytes stops at what a job may be', async () => {
    const bomb = deflateRawSync(Buffer.alloc(5_000_000, 0x20), { level: 9 }).toString('base64url');
    expect(bomb.length).toBeLessThan(longestLink);
    expect(await says(`#job=${bomb}`)).toContain('unpacks to more than 500000 bytes');
  });
});

describe('a QR code', () => {
  /** Its pixels, four to a module, as a camera sees them. */
  const pixels = ({ d, side }: { d: string; side: number }) => {
    const scale = 4;
    const width = side * scale;
    const data = new Uint8ClampedArray(width * width * 4).fill(255);
    for (const [, x, y] of d.matchAll(/M(\d+) (\d+)h1v1h-1z/g))
      for (let row = 0; row < scale; row += 1)
        for (let column = 0; column < scale; column += 1) {
          const at = 4 * ((Number(y) * scale + row) * width + Number(x) * scale + column);
          data.set([0, 0, 0, 255], at);
        }
    return { data, width };
  };

  it('of a job’s link is read by another program as that link', async () => {
    const address = await linkOf(jobOf(starters[0]?.text ?? ''));
    const code = qrOf(address);
    if (code === undefined) throw new Error('it did not fit');
    const { data, width } = pixels(code);
    expect(jsQr(data, width, width)?.data).toBe(address);
  });

  it('is not made of what does not fit into one', () => {
    expect(qrOf('x'.repeat(mostBytes))).toBeDefined();
    expect(qrOf('x'.repeat(mostBytes + 1))).toBeUndefined();
  });
});
