// Package shorttest is how tests are run by default: a share of what is swept, so that the whole run takes a minute, and
// all of it in the long form, CONTRALAY_LONG=1. Only tests import it.
package shorttest

import (
	"flag"
	"math/rand/v2"
	"os"
	"os/exec"
	"runtime/debug"
	"slices"
	"testing"
)

// Long reports whether the long form of the tests is asked for.
func Long() bool { return os.Getenv("CONTRALAY_LONG") != "" }

// rounds is how often each random test is tried in a default run. They are drawn anew in every run: many runs see much.
const rounds = "12"

// Rounds is how often something drawn is tried: a third of n by default, n times in the long form.
func Rounds(n int) int {
	if Long() {
		return n
	}
	return (n + 2) / 3
}

// Some are those of several things that are tried: a third of them by default, drawn anew in every run, and all in the long form.
func Some[T any](all []T) []T {
	some := slices.Clone(all)
	if Long() {
		return some
	}
	rand.Shuffle(len(some), func(i, k int) { some[i], some[k] = some[k], some[i] })
	return some[:Rounds(len(some))]
}

// Turn skips a test whose turn it is not: by default one of three such tests runs, others in every run, and in the long form all.
// It is for a long walk through the program of which others like it are tried as well.
func Turn(t testing.TB) {
	t.Helper()
	if !Long() && (run+len(t.Name()))%3 != 0 {
		t.Skip("its turn is in one of three runs, and in the long form")
	}
}

// run is which third of those that take turns runs in this process.
var run = rand.IntN(3)

// Main is the TestMain of a package whose random tests take long: each has some rounds, unless more are asked for by
// -rapid.checks; a hundred in the long form.
func Main(m *testing.M) {
	flag.Parse()
	CollectLate()
	if at := flag.Lookup("rapid.checks"); !Long() && at != nil && at.Value.String() == at.DefValue {
		_ = at.Value.Set(rounds) // a number, which it takes
	}
	os.Exit(m.Run())
}

// Program is the path of a browser or an office program that opens what is made. It takes seconds to start: the test is
// skipped with -short, where neither CI nor CONTRALAY_LONG is set, and where the program is not here.
func Program(t testing.TB, name string) string {
	t.Helper()
	if testing.Short() || os.Getenv("CI") == "" && !Long() {
		t.Skipf("%s is started where CI is set, and in the long form, and not with -short", name)
	}
	path, err := exec.LookPath(name)
	if err != nil {
		t.Skipf("no %s here: what it would open is not opened", name)
	}
	return path
}

// CollectLate lets the collector come later than it does in the program. A test throws most of what it makes away at
// once; the collector took a fifth of the time.
func CollectLate() { debug.SetGCPercent(400) }
