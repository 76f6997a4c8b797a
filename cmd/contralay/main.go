// Command contralay is a build-sheet workbench for wiring harnesses at the
// terminal. See README.md.
package main

import (
	"math"
	"os"
	"runtime/debug"
	"time"

	_ "contralay/ui/quiet" // before the terminal library: see there
)

// gcPercent lets the heap grow to some 20 MB between collections: a start reads its
// tables without one, and no key waits for one.
const gcPercent = 400

// benchMemory is how much the bench takes before it collects more often than gcPercent has it, in
// bytes: a burst of changes to a large harness makes garbage faster than the rests between keys
// take it away. The search beside the screen holds up to some half of it.
const benchMemory = 128 << 20

// searchFor is how long a bench searches for better lay-ups by itself.
const searchFor = 10 * time.Second

func main() {
	w := world{
		in: os.Stdin, out: os.Stdout, err: os.Stderr, env: os.Getenv, now: time.Now, search: searchFor, collect: collect,
		large: largePages,
	}
	w.takes(gcPercent, math.MaxInt64)
	os.Exit(run(os.Args[1:], w))
}

func collect(percent int, most int64) {
	debug.SetGCPercent(percent)
	debug.SetMemoryLimit(most)
}
