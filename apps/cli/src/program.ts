import { Command, Option } from 'commander';
import type { BalanceJobOptions } from './commands/balance-job.ts';
import type { CheckOptions } from './commands/check-jobs.ts';
import type { CompareLogsOptions } from './commands/compare-logs.ts';
import type { FindStopsOptions } from './commands/find-stops.ts';
import type { ExplainJobOptions } from './commands/explain-job.ts';
import type { FadeOfLogsOptions } from './commands/fade-of-logs.ts';
import type { HeatOfJobOptions } from './commands/heat-of-job.ts';
import type { LimitJobOptions } from './commands/limit-job.ts';
import type { ListChannelsOptions } from './commands/list-channels.ts';
import type { NewJobOptions } from './commands/new-job.ts';
import type { PredictJobOptions } from './commands/predict-job.ts';
import type { PedalOfJobOptions } from './commands/pedal-of-job.ts';
import type { PlanTestOptions } from './commands/plan-test.ts';
import type { ServeJobsOptions } from './commands/serve-jobs.ts';
import type { SimulateJobOptions } from './commands/simulate-job.ts';
import type { ExitCode } from './surface/exit-code.ts';
import type { Terminal } from './surface/terminal.ts';

const about = `Says what holds a car's brakes back, what a kit would change, and what measured stops show.
A figure from the maker of the car or the part always overrides ours. Brakes can kill: check before you drive.`;

const exits = `
Exit codes:
  0  done; where the command asks something, the answer is yes
  1  the answer is no: a mistake in the job, no stop in the log, sets that can't be compared
  2  the command was not written as it should be
  3  a file can't be read, or what is in it can't
  4  a fault of this program
  5  the machine refused: the file is already there, the port is taken`;

/** The commands, their options and their help. What they do is loaded only when they run. */
export function buildProgram(end: (code: ExitCode) => void, terminal: Terminal): Command {
  const program = new Command('standstill')
    .description(about)
    .version('0.1.0')
    .exitOverride()
    .configureHelp({ showGlobalOptions: false })
    .showHelpAfterError('(add --help for the options and an example)')
    .addHelpText('after', exits);

  program
    .command('new <file>')
    .description('write a job file to fill in; never over a file that is there')
    .option('--title <text>', 'what the job is called')
    .addOption(json())
    .addHelpText('after', example('standstill new coupe.yaml --title "Long pedal after two laps"'))
    .action(async (file: string, options: NewJobOptions) =>
      end(await (await import('./commands/new-job.ts')).newJob(file, options, terminal)),
    );

  program
    .command('check <jobs...>')
    .description('find every mistake in job files, with line and column, and say what was assumed')
    .option('--assumed', 'list every assumed value with its reason')
    .addOption(json())
    .addHelpText('after', example('standstill check coupe.yaml'))
    .action(async (jobs: string[], options: CheckOptions) =>
      end(await (await import('./commands/check-jobs.ts')).checkJobs(jobs, options, terminal)),
    );

  withSetUpOptions(program.command('predict <job>'))
    .description(
      'say what each set-up of a job would do to the stop, the pedal, the lock order and the heat, and how sure that is',
    )
    .option('--speed <speed>', 'speed at the start of the stop, e.g. "60 mph"')
    .option('--pedal-force <force>', 'force of the foot, e.g. "90 lbf"')
    .addHelpText(
      'after',
      example('standstill predict examples/hill-climb-coupe --speed "60 mph" --pedal-force "90 lbf"'),
    )
    .action(async (job: string, options: PredictJobOptions) =>
      end(await (await import('./commands/predict-job.ts')).predictJob(job, options, terminal)),
    );

  withSetUpOptions(program.command('simulate <job>'))
    .description(
      'go through the stop wheel by wheel: when a wheel locks, what ABS does, where the energy goes. To compare kits use predict; use this for ABS, a locked wheel, or to check predict',
    )
    .option('--speed <speed>', 'speed at the start of the stop, e.g. "60 mph"')
    .option('--pedal-force <force>', 'force of the foot, or the most that it gives, e.g. "90 lbf"')
    .option('--deceleration <deceleration>', 'let the foot seek a deceleration, e.g. "0.5 g"')
    .option('--locked-wheels', 'without ABS keep the foot down whatever locks')
    .option('--trace', 'with --json, the stop over time: every wheel, 200 times a second')
    .addHelpText(
      'after',
      example(
        'standstill simulate examples/hill-climb-coupe --set-up as-found',
        'standstill simulate examples/hill-climb-coupe --set-up as-found --locked-wheels',
      ),
    )
    .action(async (job: string, options: SimulateJobOptions) =>
      end(await (await import('./commands/simulate-job.ts')).simulateJob(job, options, terminal)),
    );

  withSetUpOptions(program.command('limits <job>'))
    .description('say what holds each set-up back, where the feet go, and what to measure next')
    .option('--speed <speed>', 'speed at the start of the stop, e.g. "60 mph"')
    .option('--pedal-force <force>', 'force of the foot, e.g. "90 lbf"')
    .addHelpText('after', example('standstill limits examples/hill-climb-coupe --set-up as-found'))
    .action(async (job: string, options: LimitJobOptions) =>
      end(await (await import('./commands/limit-job.ts')).limitJob(job, options, terminal)),
    );

  program
    .command('heat <job>')
    .description(
      'say what gets too hot first in a schedule of stops, how the brakes fade, and whether fluid boils',
    )
    .addOption(
      new Option(
        '--schedule <name>',
        'what is driven (default: stops, as the job repeats them); burnish, heating-snubs and hot-stops are those of FMVSS 135',
      ).choices(['stops', 'burnish', 'heating-snubs', 'hot-stops', 'descent', 'bed-in', 'laps']),
    )
    .option('--speed <speed>', 'speed of the stops or of the descent, e.g. "60 mph"')
    .option('--pedal-force <force>', 'force of the foot, e.g. "90 lbf"')
    .option('--count <n>', 'how many stops or laps')
    .option('--interval <time>', 'from one stop to the next, e.g. "45 s"')
    .option('--drop <height>', 'height of the descent, e.g. "2000 ft"')
    .option('--grade <grade>', 'fall of the descent, e.g. "8 %"')
    .option('--brake-share <share>', 'share of the descent that the brakes take, the engine takes the rest')
    .option(
      '--points <points>',
      'braking points of a lap: "110 mph, 45 mph, 22 s; 95 mph, 50 mph, 18 s", or a CSV or YAML file',
    )
    .option('--set-up <id>', 'only this set-up; repeat for more', collect)
    .option('--draws <n>', 'draws behind the intervals')
    .option('--seed <n>', 'seed of the draws')
    .option('--assumed', 'list every assumed value with its reason')
    .addOption(units())
    .addOption(json())
    .addHelpText(
      'after',
      example(
        'standstill heat examples/hill-climb-coupe --count 20 --interval "45 s"',
        'standstill heat examples/hill-climb-coupe --schedule descent --drop "2000 ft" --grade "8 %"',
      ),
    )
    .action(async (job: string, options: HeatOfJobOptions) =>
      end(await (await import('./commands/heat-of-job.ts')).heatOfJob(job, options, terminal)),
    );

  program
    .command('pedal <job>')
    .description(
      'say where the travel of the pedal goes, what a lost circuit leaves, and what a measured pedal tells',
    )
    .option('--set-up <id>', 'the set-up (default: the car as found)')
    .option('--pedal-force <force>', 'force of the foot, e.g. "90 lbf"')
    .option('--deceleration <deceleration>', 'deceleration to give the firmness at, e.g. "0.5 g"')
    .option(
      '--measured <points>',
      'pushes from light to hard: "20 lbf 1.1 in; 40 lbf 1.6 in; …", or a CSV file',
    )
    .addOption(
      new Option(
        '--engine <state>',
        'of the measured pushes; off means off and the vacuum pumped out',
      ).choices(['running', 'off']),
    )
    .option('--draws <n>', 'draws behind the intervals')
    .option('--seed <n>', 'seed of the draws')
    .option('--assumed', 'list every assumed value with its reason')
    .addOption(units())
    .addOption(json())
    .addHelpText(
      'after',
      example(
        'standstill pedal coupe.yaml --engine off --measured "5 lbf 0.9 in; 10 lbf 1.2 in; 30 lbf 1.6 in; 80 lbf 2.3 in"',
      ),
    )
    .action(async (job: string, options: PedalOfJobOptions) =>
      end(await (await import('./commands/pedal-of-job.ts')).pedalOfJob(job, options, terminal)),
    );
  program
    .command('balance <job>')
    .description('say which axle locks first, as tested and laden, and what the parking brake holds')
    .option('--speed <speed>', 'speed at which lift of the body counts, e.g. "60 mph"')
    .option(
      '--set-up <id>',
      'only this set-up; repeat for more, the first is what the others are set against',
      collect,
    )
    .option('--laden', 'only with everybody and everything in the car')
    .option('--unladen', 'only as tested, with the mass that the job states')
    .option('--draws <n>', 'draws behind the intervals')
    .option('--seed <n>', 'seed of the draws')
    .option('--assumed', 'list every assumed value with its reason')
    .addOption(units())
    .addOption(json())
    .addHelpText('after', example('standstill balance examples/hill-climb-coupe --laden'))
    .action(async (job: string, options: BalanceJobOptions) =>
      end(await (await import('./commands/balance-job.ts')).balanceJob(job, options, terminal)),
    );

  withLogOptions(program.command('channels <logs...>'))
    .description('say what every column of a log was taken for, by whom, and what was skipped')
    .option('--save <file>', 'remember what --column says, by the headings of the log, in a file of its own')
    .option('--force', 'change the file of --save where it is already there')
    .addHelpText(
      'after',
      example(
        'standstill channels before.csv',
        'standstill channels before.csv --column "brake-pressure=Brk P [bar]" --save columns.yaml',
        'standstill channels car.log --signals car.dbc',
      ),
    )
    .action(async (logs: string[], options: ListChannelsOptions) =>
      end(await (await import('./commands/list-channels.ts')).listChannels(logs, options, terminal)),
    );

  withPicture(withLogOptions(program.command('stops <logs...>')))
    .description('find the stops in logs: CSV, NMEA 0183, GPX, JSON lines, CAN frames with a DBC file')
    .addHelpText(
      'after',
      example(
        'standstill stops before.csv --speed "60 mph"',
        'standstill stops before.csv --speed "60 mph" --reject "2: gust of wind" --svg stops.svg',
      ),
    )
    .action(async (logs: string[], options: FindStopsOptions) =>
      end(await (await import('./commands/find-stops.ts')).findStops(logs, options, terminal)),
    );

  withPicture(withLogOptions(program.command('compare [before] [after]')))
    .description(
      'set stops measured before against stops measured after; several logs a side with commas between',
    )
    .option('--before <log>', 'one more log from before; may be repeated', collect)
    .option('--after <log>', 'one more log from after; may be repeated', collect)
    .option('--repeat <log>', 'the old set-up once more, after the new one; may be repeated', collect)
    .option('--reference-before <log>', 'another car, left alone, on the day before the change', collect)
    .option('--reference-after <log>', 'the same car on the day after the change', collect)
    .addOption(definition())
    .option('--set-up <id>', 'the set-up of the job that was fitted after')
    .option('--seed <n>', 'seed of the shuffling')
    .addHelpText(
      'after',
      example(
        'standstill compare before-1.csv,before-2.csv after.csv --speed "60 mph"',
        'standstill compare before.csv after.csv --repeat before-again.csv --svg sets.svg',
      ),
    )
    .action(async (before: string | undefined, after: string | undefined, options: CompareLogsOptions) =>
      end(await (await import('./commands/compare-logs.ts')).compareLogs([before, after], options, terminal)),
    );

  withPicture(withLogOptions(program.command('fade [logs...]')))
    .description('say whether stops driven one after the other get longer, and how hot the brakes get')
    .option('--against <log>', 'the same schedule with the other set-up; may be repeated', collect)
    .addOption(definition())
    .option('--set-up <id>', 'the set-up of the job that the first logs were driven with')
    .option('--draws <n>', 'draws behind what the model expects')
    .option('--seed <n>', 'seed of the draws')
    .addHelpText(
      'after',
      example(
        'standstill fade fade-before.csv --speed "60 mph"',
        'standstill fade fade-before.csv --against fade-after.csv --speed "60 mph" --svg fade.svg',
      ),
    )
    .action(async (logs: string[], options: FadeOfLogsOptions) =>
      end(await (await import('./commands/fade-of-logs.ts')).fadeOfLogs(logs, options, terminal)),
    );

  withLogOptions(program.command('plan'))
    .description(
      'say what to drive so that a difference shows: how many stops, in which order, and what to write down',
    )
    .option('--resolution <length>', 'the difference that should show, e.g. "3 ft"')
    .option('--spread <length>', 'standard deviation of single stops, e.g. "2 ft"')
    .option('--from <log>', 'take the spread from the stops of a log; may be repeated', collect)
    .option('--power <share>', 'chance to see a difference of that size, e.g. "90 %"')
    .option('--no-repeat', 'without the old set-up once more at the end')
    .option('--set-up <id>', 'a set-up of the job that is tested; repeat for more', collect)
    .option('--draws <n>', 'draws behind the cool-down')
    .option('--seed <n>', 'seed of the draws')
    .addHelpText(
      'after',
      example(
        'standstill plan --resolution "3 ft" --speed "60 mph" --spread "2 ft"',
        'standstill plan --resolution "3 ft" --from before.csv --job examples/hill-climb-coupe',
      ),
    )
    .action(async (options: PlanTestOptions) =>
      end(await (await import('./commands/plan-test.ts')).planOfTest(options, terminal)),
    );

  withPicture(withLogOptions(program.command('explain <job>'), 'of the job'))
    .description(
      'hold the model against measured stops: how much of the change is the brakes, and what stays open',
    )
    .option('--before <log>', 'a log from before in place of those of the job; may be repeated', collect)
    .option('--after <log>', 'a log from after in place of those of the job; may be repeated', collect)
    .option('--set-up <id>', 'the set-up of the job that was fitted after')
    .option('--draws <n>', 'draws from the job')
    .option('--seed <n>', 'seed of the draws')
    .option('--assumed', 'list every assumed value with its reason')
    .addHelpText('after', example('standstill explain examples/hill-climb-coupe --svg expectation.svg'))
    .action(async (job: string, options: ExplainJobOptions) =>
      end(await (await import('./commands/explain-job.ts')).explainJob(job, options, terminal)),
    );

  program
    .command('serve')
    .description('serve the app and keep jobs in a folder; on this machine only')
    .option('--port <n>', 'port; 0 takes any that is free (default 4780)')
    .option(
      '--data <folder>',
      "where jobs and logs are kept (default: STANDSTILL_DATABASE, else the user's data folder)",
    )
    .option('--demo <job>', 'put this job and its logs in where there are no jobs yet')
    .option('--no-open', "don't open the browser")
    .addOption(json())
    .addHelpText('after', example('standstill serve --port 4800 --data ~/workshop'))
    .action(async (options: ServeJobsOptions) =>
      end(await (await import('./commands/serve-jobs.ts')).serveJobs(options, terminal)),
    );

  program
    .command('schema [name]')
    .description('print the JSON Schema of the job document or of what a command prints with --json')
    .addHelpText('after', example('standstill schema prediction'))
    .action(async (name: string | undefined) =>
      end((await import('./commands/print-schema.ts')).printSchema(name, terminal)),
    );
  return program;
}

/** What every question about the set-ups of a job takes: which of them, and the draws behind its intervals. */
function withSetUpOptions(command: Command): Command {
  return command
    .option(
      '--set-up <id>',
      'only this set-up; repeat for more, the first is what the others are set against',
      collect,
    )
    .option('--draws <n>', 'draws behind the intervals')
    .option('--seed <n>', 'seed of the draws')
    .addOption(sampling())
    .option('--assumed', 'list every assumed value with its reason')
    .addOption(units())
    .addOption(json());
}

/** What every command with logs takes: what a person can say of them, units and form of the answer. */
function withLogOptions(command: Command, job: 'beside' | 'of the job' = 'beside'): Command {
  if (job === 'beside')
    command.option('--job <job>', 'what it says of its logs holds, and of a change what the model expects');
  return command
    .option('--speed <speed>', 'nominal speed that distances are corrected to, e.g. "60 mph"')
    .option(
      '--column <role=heading>',
      'what a column is, e.g. "brake-pressure=Brk P [bar]"; repeat for more',
      collect,
    )
    .option('--columns <file>', 'columns that "channels --save" remembered')
    .option('--time-column <name>', 'column that holds the time')
    .option('--speed-column <name>', 'column that holds the speed')
    .option('--speed-unit <unit>', 'unit of the speed column, e.g. km/h')
    .option(
      '--speed-scale <n>',
      'what the speed column is multiplied by: the full scale of numbers from 0 to 1',
    )
    .option('--scale-assumed', 'the scale is a guess: every result says so')
    .option('--signals <file>', 'DBC file that describes the signals of a log of CAN frames')
    .option('--grade <grade>', 'grade of the road, uphill positive, e.g. "-1 %"')
    .option('--start-temperature <window>', 'leave out stops begun outside of it, e.g. "150 °F to 212 °F"')
    .option(
      '--reject <stop>',
      'leave out a stop with a reason, e.g. "2: gust of wind"; repeat for more',
      collect,
    )
    .option('--restore <stop>', 'count a stop that was left out, with a reason; repeat for more', collect)
    .addOption(units())
    .addOption(json());
}

function withPicture(command: Command): Command {
  return command
    .option('--svg <file>', 'draw the answer into this file')
    .option('--force', 'write over the file of the picture where it is already there');
}

function definition(): Option {
  return new Option('--definition <name>', 'where the distance begins').choices(['application', 'gate']);
}

function json(): Option {
  return new Option('--json', 'print the result for programs; "standstill schema" has its shape');
}

function units(): Option {
  return new Option('--units <system>', 'units of the text').choices(['us', 'metric']).default('us');
}

function sampling(): Option {
  return new Option('--sampling <how>', 'how the draws are spread').choices(['latin-hypercube', 'sobol']);
}

function example(...lines: readonly string[]): string {
  return `\nExample:\n${lines.map((line) => `  ${line}`).join('\n')}`;
}

function collect(value: string, earlier: readonly string[] = []): readonly string[] {
  return [...earlier, value];
}
