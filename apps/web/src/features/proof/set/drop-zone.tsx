import { useId, useState, type DragEvent } from 'react';

export interface DropZoneProps {
  readonly title: string;
  readonly busy: boolean;
  readonly onFiles: (files: readonly File[]) => void;
}

/** Takes log files by choosing or dropping; works by keyboard as any file field. */
export function DropZone({ title, busy, onFiles }: DropZoneProps) {
  const id = useId();
  const [over, setOver] = useState(false);
  const drop = (event: DragEvent) => {
    event.preventDefault();
    setOver(false);
    onFiles([...event.dataTransfer.files]);
  };
  return (
    <div
      className={over ? 'drop over' : 'drop'}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={drop}
    >
      <label htmlFor={id}>{title}</label>
      <input
        id={id}
        type="file"
        multiple
        disabled={busy}
        aria-describedby={`${id}h`}
        onChange={(event) => {
          onFiles([...(event.target.files ?? [])]);
          event.target.value = '';
        }}
      />
      <p id={`${id}h`} className="small soft">
        {busy
          ? 'Keeping the file …'
          : 'CSV, NMEA, GPX or CAN frames (with their .dbc file). Kept as it is, byte for byte, and read here in the browser.'}
      </p>
    </div>
  );
}
