/** @type {import('next').NextConfig} */
const config = {
  // The whole app runs in the browser, so it is hosted as plain files.
  output: 'export',
  // Every page is a folder with an index.html, which any file server can find.
  trailingSlash: true,
  // There is no server to resize images.
  images: { unoptimized: true },
  // Types are a stage of `npm test`; checking them here again would double the time of the first `npm start`.
  typescript: { ignoreBuildErrors: true },
  // `next dev` is opened by number as often as by name.
  allowedDevOrigins: ['127.0.0.1'],
};

export default config;
