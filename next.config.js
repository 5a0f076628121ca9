/** @type {import('next').NextConfig} */
const config = {
  // The whole app runs in the browser, so it is hosted as plain files.
  output: 'export',
  trailingSlash: true,
  images: { unoptimized: true },
};

export default config;
