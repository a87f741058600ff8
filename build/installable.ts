import type { HtmlTagDescriptor, Plugin } from 'vite';
import { iconPng, iconSvg } from './icon.ts';

const manifestName = 'manifest.webmanifest';
/** For a system that puts the page on its home screen, and asks for a picture of this size in px [practice]. */
const homeIcon = { name: 'icon-180.png', size: 180, margin: 0.12 };
/** As wide as systems ask for [practice]; one with so much paper around that a system may cut it to its own shape: what is inside 80 % of its width stays (Web Application Manifest, 4.3). */
const icons = [
  { name: 'icon-192.png', size: 192, margin: 0.06, purpose: 'any' },
  { name: 'icon-512.png', size: 512, margin: 0.06, purpose: 'any' },
  { name: 'icon-cut.png', size: 512, margin: 0.25, purpose: 'maskable' },
] as const;

/** The colours of the page's head, as in src/app/style/base.css. */
const paper = { light: '#fffefa', dark: '#1c2730' };

const manifest = {
  name: 'Sagitta',
  short_name: 'Sagitta',
  description: 'Design a guitar’s replacement bridge and saddle, and print true 1:1 templates.',
  lang: 'en',
  start_url: './',
  scope: './',
  display: 'standalone',
  background_color: paper.light,
  theme_color: paper.light,
  icons: icons.map(({ name, size, purpose }) => ({ src: name, sizes: `${size}x${size}`, type: 'image/png', purpose })),
};

const link = (attrs: Record<string, string>): HtmlTagDescriptor => ({ tag: 'link', attrs, injectTo: 'head' });

/** Gives the page its icon, and writes what a system needs to install it like a program of its own: not for a page that is one file. */
export const installable = (isSingle: boolean): Plugin => ({
  name: 'installable',
  transformIndexHtml: {
    order: 'post',
    handler: (_, { bundle }) => [
      link({ rel: 'icon', href: `data:image/svg+xml,${encodeURIComponent(iconSvg())}` }),
      ...Object.entries(paper).map(([scheme, content]) => ({
        tag: 'meta',
        attrs: { name: 'theme-color', content, media: `(prefers-color-scheme: ${scheme})` },
        injectTo: 'head' as const,
      })),
      ...(isSingle || !bundle
        ? []
        : [
            link({ rel: 'manifest', href: `./${manifestName}` }),
            link({ rel: 'apple-touch-icon', href: `./${homeIcon.name}` }),
          ]),
    ],
  },
  generateBundle() {
    if (isSingle) return;
    for (const { name, size, margin } of [homeIcon, ...icons])
      this.emitFile({ type: 'asset', fileName: name, source: iconPng(size, margin) });
    const source = `${JSON.stringify(manifest, null, 2)}\n`;
    this.emitFile({ type: 'asset', fileName: manifestName, source });
  },
});
