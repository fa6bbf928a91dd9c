import { useLayoutEffect, useRef, useState, type RefObject } from 'react';
import { flushSync } from 'react-dom';

/** px of a letter or A4 sheet between its margins; a wider picture would be shrunk, and its text with it. */
const paper = 680;

/** The width of an element in CSS pixels, known before the first paint kept up to date, and fitted to the sheet for printing. */
export function useWidth<E extends HTMLElement>(): readonly [RefObject<E | null>, number] {
  const element = useRef<E>(null);
  const [width, setWidth] = useState(0);
  useLayoutEffect(() => {
    const place = element.current;
    if (!place) return;
    const measure = () => setWidth(Math.floor(place.getBoundingClientRect().width));
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(place);
    const toPaper = () => flushSync(() => setWidth((wide) => Math.min(wide, paper)));
    window.addEventListener('beforeprint', toPaper);
    window.addEventListener('afterprint', measure);
    return () => {
      observer.disconnect();
      window.removeEventListener('beforeprint', toPaper);
      window.removeEventListener('afterprint', measure);
    };
  }, []);
  return [element, width];
}
