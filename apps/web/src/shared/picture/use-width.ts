import { useLayoutEffect, useRef, useState, type RefObject } from 'react';

/** The width of an element in CSS pixels, known before the first paint and kept up to date. */
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
    return () => observer.disconnect();
  }, []);
  return [element, width];
}
