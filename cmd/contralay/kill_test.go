package main

import (
	"fmt"
	"math/rand/v2"
	"os"
	"strconv"
	"strings"
	"testing"
	"time"

	"contralay/calc"
	runquery "contralay/calc/query/run"
	"contralay/model/catalogue"
	"contralay/model/file"
	"contralay/model/shorttest"
)

// A run is killed at random instants, with keys on their way: whatever the screen showed as done is
// done at the next start, and nothing is that nobody pressed a key for. What is done is a beginning of
// the run without a gap, piece by piece. Every other time the journal is thrown away as well, as where
// somebody else goes on from another machine: the log beside the file has it all. A serial that has come
// to its first hold makes room for the next. CONTRALAY_KILLS sets how many.
func TestKillsLoseNothing(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	rounds := 2
	if shorttest.Long() {
		rounds = 20
	}
	if n, err := strconv.Atoi(os.Getenv("CONTRALAY_KILLS")); err == nil {
		rounds = n
	}
	dir, env := state(t)
	name := fileOf(t, "loom.toml", nineteen())
	rng := rand.New(rand.NewPCG(24, 2026))
	serial, before := 1, 0 // the serial in hand, and what was done of those before it
	sure := 0              // Enter whose work was on the screen
	most := 0              // and all that were pressed
	for round := range rounds + 1 {
		s := start(t, 80, 24, []string{env}, "run", "--bounce", "0", "--serial", strconv.Itoa(serial), name)
		if strings.Contains(s.see("Esc goes back"), "Unsaved work") {
			s.press(enter)
		}
		s.see("Who works")
		s.press("7" + enter)
		if screen := s.see("BENCH RUN"); strings.Contains(screen, "the lot of this reel") {
			s.press("R-7" + enter)
			s.see("1 of 12")
		}
		s.press("s")
		s.see("saved to")
		if _, err := os.Stat(name + ".run"); err == nil {
			t.Fatalf("round %d: all is saved, and the log is still there", round)
		}
		got, all := pressed(t, name, strconv.Itoa(serial))
		if got < min(sure, all) || got > most {
			t.Fatalf("round %d: %d of %d pieces are done, %d were on the screen, %d keys were pressed", round, got, all, sure, most)
		}
		if round == rounds {
			break
		}
		if sure = got; got == all {
			_ = s.cmd.Process.Kill()
			<-s.gone
			serial, before, sure, most = serial+1, before+all, 0, 0
			continue
		}
		for range rng.IntN(2) {
			s.changed(enter)
			sure++
		}
		more := rng.IntN(3)
		most = sure + more
		if more > 0 {
			s.press(strings.Repeat(enter, more))
		}
		time.Sleep(time.Duration(rng.IntN(40)) * time.Millisecond)
		_ = s.cmd.Process.Kill()
		<-s.gone
		if round%2 == 1 {
			if err := os.RemoveAll(dir); err != nil {
				t.Fatal(err)
			}
		}
	}
	t.Logf("%d kills, %d pieces done of %d serials: none lost, none made up", rounds-serial+1, before+sure, serial)
	if before+sure < rounds/4 {
		t.Errorf("only %d pieces were done: the test shows little", before+sure)
	}
}

// pressed is how many Enter the record of a serial comes to: one for each piece, and one for each layer
// of several that is gone on from; all is how many there are up to the first hold that is signed. It has
// no gap.
func pressed(t *testing.T, name, serial string) (n, all int) {
	t.Helper()
	d, err := file.Load(name)
	if err != nil {
		t.Fatal(err)
	}
	cat, err := catalogue.Default()
	if err != nil {
		t.Fatal(err)
	}
	b := &d.Harness.Builds[d.Harness.BuildOf(serial)]
	s := calc.Build(&d.Harness, cat, nil)
	open, held := "", false
	for _, step := range runquery.For(s, b) {
		pieces := runquery.Pieces(s, step)
		if step.Kind == runquery.LotStep {
			continue
		}
		last := step.Kind == runquery.LayStep && len(pieces) > 1
		if !held {
			all += len(pieces)
			if last {
				all++
			}
		}
		held = held || step.Kind == runquery.HoldStep
		for _, p := range pieces {
			switch has := step.Has(b, p); {
			case has && open != "":
				t.Fatalf("%s %s is done, and %s before it is not", step.Key, p.Key, open)
			case has:
				n++
			case open == "":
				open = fmt.Sprint(step.Key, " ", p.Key)
			}
		}
		switch {
		case step.In(b) && open != "":
			t.Fatalf("%s is done, and %s is not", step.Key, open)
		case !step.In(b) && open == "":
			open = step.Key
		case step.In(b) && last:
			n++
		}
	}
	return n, all
}
