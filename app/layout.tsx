import type { Metadata, Viewport } from 'next';
import type { ReactNode } from 'react';
import './globals.css';

export const metadata: Metadata = {
  title: 'Rimeplan',
  description: 'Plan the throughput, running cost and growth of a small freeze-drying shop.',
};

export const viewport: Viewport = {
  width: 'device-width',
  initialScale: 1,
  // The two sides of --page in globals.css; a test holds them together.
  themeColor: [
    { media: '(prefers-color-scheme: light)', color: '#eff4f6' },
    { media: '(prefers-color-scheme: dark)', color: '#0e171d' },
  ],
};

/** The document around every page. */
export default function RootLayout({ children }: { readonly children: ReactNode }) {
  return (
    <html lang="en">
      <body>{children}</body>
    </html>
  );
}
