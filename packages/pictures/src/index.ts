export * from './look/picture-look.ts';
export * from './stop/stops-picture.ts';
export * from './sets/sets-picture.ts';
export * from './fade/fade-picture.ts';
export * from './expectation/expectation-picture.ts';
