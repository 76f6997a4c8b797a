package main

import (
	"fmt"
	"strconv"
	"strings"
	"time"

	"contralay/calc/formula/plan"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/paper"
)

// options are the flags of every command; they may stand before or after arguments.
type options struct {
	help      bool
	json      bool
	ascii     bool
	light     bool
	colour    string
	catalogue string
	centres   string
	centre    string // of a plan: a number of pieces, or the pieces
	layers    int    // of a plan, round its centre; 0: any
	effort    int    // of a search; 0: an answer at once
	spares    int
	pairs     []string // how many pairs, of which wire
	shielded  []string // and of shielded ones
	ratio     float64
	bounce    time.Duration
	runBounce time.Duration
	folder    string    // where a sheet goes, or a drawing
	on        string    // the day it is of
	against   string    // the harness that lists are attached to
	recipe    string    // what columns mean, from an earlier time
	unit      string    // of lengths that state none
	spec      string    // of wires that state none
	sheets    []string  // of a workbook
	noEnds    bool      // rows without cavity and end are wires too
	full      bool      // every finding by itself
	explain   bool      // how each table of a list may be read
	accept    string    // the group of readings that is accepted, or "all"
	withdraw  string    // the group whose correction is taken back
	keepOdd   bool      // an odd one out is accepted with the rest
	semicolon bool      // lists are written for a spreadsheet where the comma marks decimals
	without   []string  // readings that are left out
	run       bool      // the bench opens on a run
	serial    string    // of what is built
	layer     string    // that is in hand in a section
	by        string    // what the colours of a section tell apart
	paper     string    // that a drawing is printed on
	add       paper.Add // pages of a sheet that are not printed by default
	customer  bool      // the set to hand over, not the one to build from
}

// mostEffort is some minutes of search.
const mostEffort = 2_000_000_000

// parse splits flags from arguments. "--" ends the flags; "-" alone is an argument.
func parse(args []string) (options, []string, error) {
	o := options{colour: "auto", centres: "unequal", ratio: 12, runBounce: desk.MostBounce}
	var rest []string
	for i := 0; i < len(args); i++ {
		a := args[i]
		if a == "--" {
			return o, append(rest, args[i+1:]...), nil
		}
		if a == "-" || !strings.HasPrefix(a, "-") {
			rest = append(rest, a)
			continue
		}
		name, value, given := strings.Cut(strings.TrimLeft(a, "-"), "=")
		take := func() (string, error) {
			if given {
				return value, nil
			}
			if i+1 >= len(args) {
				return "", misuse{fmt.Sprintf("--%s needs a value (contralay --help)", name)}
			}
			i++
			return args[i], nil
		}
		if err := o.set(name, given, take); err != nil {
			return o, nil, err
		}
	}
	return o, rest, nil
}

func (o *options) set(name string, given bool, take func() (string, error)) error {
	switch name {
	case "h", "help", "json", "ascii", "light", "full", "explain", "keep-odd", "customer", "semicolon":
		if given {
			return misuse{fmt.Sprintf("--%s takes no value", name)}
		}
		o.help = o.help || name == "h" || name == "help"
		o.json = o.json || name == "json"
		o.ascii = o.ascii || name == "ascii"
		o.light = o.light || name == "light"
		o.full = o.full || name == "full"
		o.explain = o.explain || name == "explain"
		o.keepOdd = o.keepOdd || name == "keep-odd"
		o.semicolon = o.semicolon || name == "semicolon"
		o.customer = o.customer || name == "customer"
		return nil
	case "colour", "color", "centres", "centre", "layers", "effort", "catalogue", "spares", "pairs", "shielded", "lay-ratio",
		"bounce", "o",
		"out", "on", "serial",
		"accept", "without", "withdraw",
		"into", "recipe", "unit", "spec", "sheet", "layer", "by", "paper", "add":
	default:
		return misuse{fmt.Sprintf("there is no flag --%s (contralay --help)", name)}
	}
	v, err := take()
	if err != nil {
		return err
	}
	switch name {
	case "colour", "color":
		o.colour = v
		return among("colour", v, "auto", "always", "never")
	case "centres":
		o.centres = v
		return among("centres", v, "equal", "unequal", "built")
	case "catalogue":
		o.catalogue = v
	case "serial":
		o.serial = v
		return oneLine(name, v, true)
	case "into":
		o.against = v
	case "recipe":
		o.recipe = v
	case "unit":
		o.unit = v
		return among("unit", v, "mm", "cm", "m", "in", "ft")
	case "spec":
		o.spec = v
		return oneLine(name, v, true)
	case "sheet":
		o.sheets = append(o.sheets, v)
	case "pairs":
		o.pairs = append(o.pairs, v)
	case "shielded":
		o.shielded = append(o.shielded, v)
	case "layer":
		o.layer = v
	case "by":
		o.by = v
	case "paper":
		o.paper = v
	case "add":
		return o.pages(v)
	case "accept":
		o.accept = v
	case "withdraw":
		o.withdraw = v
	case "without":
		o.without = append(o.without, v)
	case "o", "out":
		o.folder = v
	case "on":
		if _, err := time.Parse("2006-01-02", v); err != nil {
			return misuse{fmt.Sprintf("--on %q: write the day as 2026-05-31", v)}
		}
		o.on = v
	case "bounce":
		n, err := strconv.Atoi(v)
		if most := int(desk.MostBounce.Milliseconds()); err != nil || n < 0 || n > most {
			return misuse{fmt.Sprintf("--bounce %q: give whole milliseconds, from 0 (off) to %d. 60 to 80 suits worn keys and gloves", v,
				most)}
		}
		o.bounce = time.Duration(n) * time.Millisecond
		o.runBounce = o.bounce
	case "spares":
		n, err := strconv.Atoi(v)
		if err != nil || n < 0 || n > 100 {
			return misuse{fmt.Sprintf("--spares %q: give a whole number from 0 to 100", v)}
		}
		o.spares = n
	case "centre":
		o.centre = v
	case "layers":
		n, err := strconv.Atoi(v)
		if err != nil || n < 1 || n > 20 {
			return misuse{fmt.Sprintf("--layers %q: give a whole number from 1 to 20. The centre does not count", v)}
		}
		o.layers = n
	case "effort":
		n, err := strconv.Atoi(v)
		if err != nil || n < 1 || n > mostEffort {
			return misuse{fmt.Sprintf("--effort %q: give a whole number from 1 to %d. An answer at once takes %d", v, mostEffort,
				plan.AtOnce)}
		}
		o.effort = n
	case "lay-ratio":
		r, err := unit.ParseNumber(v)
		if err != nil || r < 4 || r > 40 {
			return misuse{fmt.Sprintf("--lay-ratio %q: give a number from 4 to 40. 8 to 16 is usual", v)}
		}
		o.ratio = r
	}
	return nil
}

// pages takes the words of --add: pages of a sheet that are not printed by default.
func (o *options) pages(v string) error {
	for word := range strings.SplitSeq(v, ",") {
		switch strings.TrimSpace(word) {
		case "loads":
			o.add.Loads = true
		case "flags":
			o.add.Flags = true
		case "loops":
			o.add.Loops = true
		default:
			return misuse{fmt.Sprintf("--add %q: give some of loads, flags, loops, with commas between them", v)}
		}
	}
	return nil
}

func among(flag, v string, allowed ...string) error {
	for _, a := range allowed {
		if v == a {
			return nil
		}
	}
	return misuse{fmt.Sprintf("--%s %q: give one of %s", flag, v, strings.Join(allowed, ", "))}
}
