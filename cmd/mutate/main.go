// Command mutate puts small faults into packages, one at a time, and tells which of them no test notices.
//
//	go run ./cmd/mutate [-seed 1] [-n 300] [-tests ./calc/...] [-log FILE] [-again FILE] PATTERN...
//
// A mutant is one change of one statement: < for <=, > for >=, == for !=, + for -, * for /, % for *, && for ||, ++ for --,
// break for continue, min for max, Ceil for Floor; a condition turned round; a ! or a minus left out; a statement
// left out; a number one more or a tenth more; nothing for a result; the neighbour of an element. Each statement that
// can be changed is as likely to be drawn as any other, by the seed. Only packages of the program are changed,
// never those for tests alone. The number that math.Inf is called with is left as it is: only its sign is read.
//
// All mutants of a package stand in one copy of it, which a variable of the environment switches, so that tests are
// compiled once. Each test is first run alone, to learn which statements it reaches. A mutant then meets the tests that
// reach it: its own package's first, then those of -tests, the quick ones first, up to the first that fails or to the
// time of -most. A constant or variable outside of functions is compiled for itself. Random tests draw twenty times.
//
// The files of the packages stay as they are. equivalent.txt names the mutants that no test can notice, each with the reason.
package main

import (
	_ "embed"
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"regexp"
	"slices"
	"strings"
	"time"
)

//go:embed equivalent.txt
var equivalentText string

func main() {
	var o options
	flag.Int64Var(&o.seed, "seed", 1, "what the mutants are drawn by")
	flag.IntVar(&o.n, "n", 300, "how many are drawn; 0: every change of every statement")
	flag.StringVar(&o.program, "program", "./cmd/contralay", "only packages that this one is made of are changed; empty: all")
	tests := flag.String("tests", "./calc/...", "whose tests are run beside the package's own, by commas")
	flag.BoolVar(&o.short, "short", true, "run tests short")
	flag.DurationVar(&o.most, "most", 30*time.Second, "what other packages' tests may take for one mutant; 0: all are run")
	flag.StringVar(&o.only, "run", "", "only the tests whose names match, such as those that are new")
	flag.Float64Var(&o.share, "share", 0, "fail where less than so many per cent are noticed, those called equivalent apart")
	flag.BoolVar(&o.list, "list", false, "only list what is drawn")
	flag.StringVar(&o.log, "log", "", "a file that takes a line for each mutant as it is judged")
	flag.StringVar(&o.again, "again", "", "run only those that survived by such a file")
	flag.Parse()
	o.patience = 20 * time.Second
	o.patterns, o.tests, o.equivalent = flag.Args(), strings.FieldsFunc(*tests, func(r rune) bool { return r == ',' }), equivalentText
	if err := mutate(o, os.Stdout); err != nil {
		fmt.Fprintln(os.Stderr, "mutate:", err)
		os.Exit(1)
	}
}

type options struct {
	dir, program    string
	seed            int64
	n               int
	patterns, tests []string
	short, list     bool
	most            time.Duration // what other packages' tests may take for one mutant
	share           float64       // of a hundred, that must be noticed
	only            string        // a regular expression
	log, again      string
	patience        time.Duration // what tests may take beyond five times their own
	equivalent      string
}

// mutate draws, runs and reports.
func mutate(o options, out io.Writer) error {
	if len(o.patterns) == 0 {
		return errors.New("give the packages to change, such as ./calc")
	}
	reasons, err := equivalents(o.equivalent)
	if err != nil {
		return err
	}
	rooms, err := load(o.dir, o.patterns, o.program)
	if err != nil {
		return err
	}
	if len(rooms) == 0 {
		return fmt.Errorf("%s: no package of %s among them", strings.Join(o.patterns, " "), o.program)
	}
	say := func(format string, a ...any) { fmt.Fprintf(out, format+"\n", a...) }
	var drawn []*mutant
	if o.again != "" {
		before, err := os.ReadFile(o.again)
		if err != nil {
			return err
		}
		if drawn, err = again(rooms, string(before)); err != nil {
			return err
		}
		say("%d mutants survived by %s and are there still", len(drawn), o.again)
	} else {
		var statements, refused int
		if drawn, statements, refused, err = draw(rooms, o.n, o.seed); err != nil {
			return err
		}
		say("%d mutants of %d statements in %d packages by seed %d; %d more did not compile",
			len(drawn), statements, len(rooms), o.seed, refused)
	}
	if o.list {
		for _, m := range drawn {
			say("%s %s", m.place(), m.change())
		}
		return nil
	}
	verdicts, err := o.try(drawn, say)
	if err != nil {
		return err
	}
	if share := report(drawn, verdicts, reasons, say); share < o.share {
		return fmt.Errorf("%.1f %% are noticed, %g are wanted", share, o.share)
	}
	return nil
}

// try builds and runs, and keeps each verdict in the log as it is found.
func (o options) try(drawn []*mutant, say func(string, ...any)) (map[*mutant]verdict, error) {
	work, err := os.MkdirTemp("", "mutate")
	if err != nil {
		return nil, err
	}
	defer os.RemoveAll(work)
	log := io.Discard
	if o.log != "" {
		f, err := os.Create(o.log)
		if err != nil {
			return nil, err
		}
		defer f.Close()
		log = f
	}
	t := &trial{dir: o.dir, work: work, short: o.short, patience: o.patience, most: o.most, drawn: drawn, say: say}
	if o.only != "" {
		if t.only, err = regexp.Compile(o.only); err != nil {
			return nil, fmt.Errorf("-run: %w", err)
		}
	}
	if err := t.find(o.tests); err != nil {
		return nil, err
	}
	if err := t.write(); err != nil {
		return nil, err
	}
	if err := t.measure(); err != nil {
		return nil, err
	}
	verdicts := map[*mutant]verdict{}
	for _, m := range drawn {
		v, err := t.judge(m)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", m.place(), err)
		}
		verdicts[m] = v
		if _, err := fmt.Fprintf(log, "%s\t%s\t%s\n", v.what, m.key(), v.by); err != nil {
			return nil, err
		}
		if v.what == survived || v.what == unseen {
			say("%s: %s %s", v.what, m.place(), m.change())
		}
	}
	return verdicts, nil
}

// report counts by package, lists who survives, and gives the share in a hundred that is noticed of those that can be.
func report(drawn []*mutant, verdicts map[*mutant]verdict, reasons map[string]string, say func(string, ...any)) (share float64) {
	type count struct{ drawn, killed, timed, equal, alive int }
	by := map[string]*count{}
	total := &count{}
	var paths []string
	var left []*mutant
	for _, m := range drawn {
		c := by[m.room.path]
		if c == nil {
			c = &count{}
			by[m.room.path], paths = c, append(paths, m.room.path)
		}
		_, equal := reasons[m.key()]
		for _, c := range []*count{c, total} {
			c.drawn++
			switch what := verdicts[m].what; {
			case what == killed:
				c.killed++
			case what == timedOut:
				c.timed++
			case equal:
				c.equal++
			default:
				c.alive++
			}
		}
		switch what := verdicts[m].what; {
		case what != survived && what != unseen:
			if equal {
				say("it was called equivalent and was noticed by %s: %s %s", verdicts[m].by, m.place(), m.change())
			}
		case !equal:
			left = append(left, m)
		}
	}
	slices.Sort(paths)
	say("\n%-40s %6s %6s %9s %10s %8s", "package", "drawn", "killed", "timed out", "equivalent", "survived")
	for _, p := range paths {
		c := by[p]
		say("%-40s %6d %6d %9d %10d %8d", p, c.drawn, c.killed, c.timed, c.equal, c.alive)
	}
	noticed := total.killed + total.timed
	share = 100 * float64(noticed) / float64(max(1, total.drawn-total.equal))
	say("%-40s %6d %6d %9d %10d %8d", "all", total.drawn, total.killed, total.timed, total.equal, total.alive)
	say("%.1f %% of all are noticed, %.1f %% of those that are not equivalent", 100*float64(noticed)/float64(max(1, total.drawn)), share)
	for _, m := range left {
		say("%s: %s %s", verdicts[m].what, m.place(), m.change())
	}
	return share
}

// equivalents reads the mutants that no test can notice: their keys, and the reason of each.
func equivalents(text string) (map[string]string, error) {
	out := map[string]string{}
	for n, line := range strings.Split(text, "\n") {
		if line == "" || strings.HasPrefix(line, "#") {
			continue
		}
		cells := strings.Split(line, "\t")
		if len(cells) != 7 || cells[6] == "" {
			return nil, fmt.Errorf("equivalent.txt, line %d: a file, a declaration, a line, a column in it, what is replaced, by what "+
				"and the reason, by tabs", n+1)
		}
		out[strings.Join(cells[:6], "\t")] = cells[6]
	}
	return out, nil
}
