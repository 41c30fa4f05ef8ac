import { dist } from './pages.ts';
import { hostOf } from './static-host.ts';

/** Serves the built site to the browser tests, as its hosts are asked to. */
const { address } = await hostOf(dist, '/', Number(process.argv[2]));
console.log(address);
