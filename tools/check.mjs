// `npm run check` holds the same list as `npm test`.
import './test.mjs';
