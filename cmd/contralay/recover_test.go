package main

import (
	"bytes"
	"fmt"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"sync/atomic"
	"syscall"
	"testing"
	"time"

	"github.com/creack/pty"

	"contralay/model/file"
	"contralay/model/shorttest"
)

// state is a place for journals of its own.
func state(t testing.TB) (dir, env string) {
	dir = t.TempDir()
	return filepath.Join(dir, "contralay"), "XDG_STATE_HOME=" + dir
}

// However the bench is cut off, the harness stays as it was and the work is offered
// at the next start; taken up and saved, nothing of it is left lying.
func TestStoppedWithUnsavedWork(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	for _, c := range shorttest.Some([]struct {
		name string
		stop func(s *terminal)
	}{
		{"TERM", func(s *terminal) { s.signal(syscall.SIGTERM) }},
		{"HUP", func(s *terminal) { s.signal(syscall.SIGHUP) }},
		{"INT from outside", func(s *terminal) { s.signal(syscall.SIGINT) }},
		{"window closed", func(s *terminal) { s.pty.Close() }},
		{"KILL", func(s *terminal) { s.signal(syscall.SIGKILL) }},
	}) {
		t.Run(c.name, func(t *testing.T) {
			t.Parallel()
			dir, env := state(t)
			s, name := dirty(t, env)
			c.stop(s)
			s.ends()
			if readFile(t, name) != readFile(t, example) {
				t.Error("the harness itself was written over")
			}
			if c.name != "window closed" && c.name != "KILL" { // nobody is there to be told, or to tell
				s.restored()
				if !strings.Contains(s.sent(), "offered when you open it again") {
					t.Error("nothing says where the work is")
				}
			}
			if more := filesIn(t, filepath.Dir(name)); len(more) != 1 {
				t.Errorf("%v lie beside the harness", more)
			}

			s = start(t, 100, 30, []string{env}, name)
			s.see("Unsaved work on", "take it: 1 change", "amps is 3.5")
			s.press(enter)
			s.see("not saved", "work is here")
			s.press("s")
			s.see("saved to")
			if got := amps(t, name); got != 3.5 {
				t.Errorf("saved are %v A, typed 3.5", got)
			}
			s.press("q")
			s.ends()
			if left := filesIn(t, dir); len(left) != 0 {
				t.Errorf("%v remain", left)
			}
		})
	}
}

// A stop with nothing to lose leaves nothing behind, and neither does leaving by
// choice, whatever was done before.
func TestStoppedWithoutWork(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	dir, env := state(t)
	name := copyOfExample(t)
	s := start(t, 100, 30, []string{env}, name)
	s.see("WIRES")
	s.signal(syscall.SIGTERM)
	s.ends()
	s.restored()
	if left := append(filesIn(t, dir), filesIn(t, filepath.Dir(name))...); len(left) != 1 {
		t.Errorf("%v, want the harness alone", left)
	}
	s, _ = dirty(t, env)
	s.press("q")
	s.see("QUIT")
	s.toRow("discard")
	s.press("+")
	s.ends()
	if left := filesIn(t, dir); len(left) != 0 {
		t.Errorf("discarded, and %v remain", left)
	}
}

// What is left for later is offered again; what is thrown away is gone, and Enter
// does not throw it away.
func TestLeftForLaterOrThrownAway(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	dir, env := state(t)
	s, name := dirty(t, env)
	s.signal(syscall.SIGKILL)
	s.ends()
	for range 2 {
		s = start(t, 100, 30, []string{env}, name)
		s.see("Unsaved work on")
		s.toRow("leave it")
		s.press(enter)
		s.see("WIRES", "offers it again")
		s.press("q")
		s.ends()
	}
	s = start(t, 100, 30, []string{env}, name)
	s.see("Unsaved work on")
	s.toRow("throw it away")
	for range 5 {
		s.press(enter)
	}
	s.see("Enter does not throw it away")
	s.press("+")
	s.see("WIRES", "gone")
	s.press("q")
	s.ends()
	if left := filesIn(t, dir); len(left) != 0 {
		t.Errorf("%v remain", left)
	}
}

// Without a file, too: and where the harness was given a name, under that.
func TestWorkWithoutAFile(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	_, env := state(t)
	s := start(t, 100, 30, []string{env})
	s.see("WIRES")
	s.press("3.5" + enter)
	s.see("not saved")
	s.signal(syscall.SIGTERM)
	s.ends()
	if left := filesIn(t, s.dir); len(left) != 0 {
		t.Errorf("%v were written where it ran", left)
	}
	s = start(t, 100, 30, []string{env})
	s.see("Unsaved work on a harness without a file")
	s.press(enter)
	s.see("work is here")
	s.press("s")
	s.see("save to file")
	s.press("mine.toml" + enter)
	s.see("saved to mine.toml")
	s.press("4.5" + enter)
	s.see("4.5 A")
	s.signal(syscall.SIGKILL)
	s.ends()
	name := filepath.Join(s.dir, "mine.toml")
	if got := amps(t, name); got != 3.5 {
		t.Errorf("saved are %v A", got)
	}
	s = start(t, 100, 30, []string{env}, name)
	s.see("Unsaved work on", "amps is 4.5; it was 3.5")
}

// A file that somebody else wrote is not written over by the key that saves.
func TestFileChangedBySomebodyElse(t *testing.T) {
	t.Parallel()
	s, name := dirty(t)
	theirs := strings.Replace(readFile(t, name), "revision = ", "revision = \"theirs\" # ", 1)
	if err := os.WriteFile(name, []byte(theirs), 0o644); err != nil {
		t.Fatal(err)
	}
	s.press("s")
	s.see("changed or removed")
	for range 5 {
		s.press("s")
	}
	s.press(enter)
	s.see("WIRES", "not saved yet")
	if readFile(t, name) != theirs {
		t.Fatal("theirs was written over")
	}
	s.press("s")
	s.toRow("write over it")
	s.press("+")
	s.see("saved to")
	if readFile(t, name+".bak") != theirs {
		t.Error("theirs is not kept as .bak")
	}
	if got := amps(t, name); got != 3.5 {
		t.Errorf("saved are %v A, typed 3.5", got)
	}
}

// Two benches on one file: the second is told, and whoever saves last is asked.
func TestTwoBenchesOnOneFile(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	_, env := state(t)
	a, name := dirty(t, env)
	b := start(t, 100, 30, []string{env}, name)
	b.see("WIRES", "Another bench has loom.toml open")
	b.press("4.5" + enter)
	b.see("4.5 A")
	a.press("s")
	a.see("saved to")
	b.press("s")
	b.see("changed or removed")
	b.press(esc)
	if got := amps(t, name); got != 3.5 {
		t.Errorf("%v A stand in the file, the first bench saved 3.5", got)
	}
}

// The folder gone, or not to be written to: the work stays on the screen and can be
// saved elsewhere.
func TestFolderGone(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	s, name := dirty(t)
	if err := os.RemoveAll(filepath.Dir(name)); err != nil {
		t.Fatal(err)
	}
	s.press("s")
	s.see("changed or removed")
	s.toRow("write over it")
	s.press("+")
	s.see("not saved: ", "not saved")
	s.press(esc)
	s.see("BRANCHES")
	s.press(esc)
	s.see("MENU")
	s.toRow("another name")
	s.press(enter + "else.toml" + enter)
	s.see("saved to else.toml")
	if got := amps(t, filepath.Join(s.dir, "else.toml")); got != 3.5 {
		t.Errorf("saved are %v A", got)
	}
}

func TestReadOnlyFolder(t *testing.T) {
	t.Parallel()
	if os.Getuid() == 0 {
		t.Skip("nothing is read-only for root")
	}
	s, name := dirty(t)
	if err := os.Chmod(filepath.Dir(name), 0o500); err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = os.Chmod(filepath.Dir(name), 0o700) })
	s.press("s")
	s.see("not saved: ", "permission denied")
	if readFile(t, name) != readFile(t, example) {
		t.Error("the harness changed")
	}
}

// Where there can be no journal the head says so, the bench works, and a cut-off
// writes beside the harness, never over what an earlier one left there.
func TestNoPlaceForAJournal(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	blocked := fileOf(t, "a file", "")
	name := copyOfExample(t)
	for n, want := range []string{"loom.recovered.toml", "loom.recovered-2.toml"} {
		s := start(t, 100, 30, []string{"XDG_STATE_HOME=" + blocked}, name)
		s.see("WIRES")
		s.press(fmt.Sprintf("%d.5%s", 3+n, enter))
		s.see("NOT SAVED, no journal")
		s.signal(syscall.SIGTERM)
		s.ends()
		if !strings.Contains(s.sent(), want) {
			t.Errorf("nothing says that the work is in %s", want)
		}
		if got := amps(t, filepath.Join(filepath.Dir(name), want)); got != 3.5+float64(n) {
			t.Errorf("%s has %v A", want, got)
		}
	}
}

var nowAmps = regexp.MustCompile(`set to (\d+) A`)

// Kills at random instants of editing and saving: what the screen has answered is
// in the file or in the journal, and both are whole. CONTRALAY_KILLS sets how many.
func TestKilledAtAnyInstant(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	kills := 4
	if shorttest.Long() {
		kills = 50
	}
	if n, err := strconv.Atoi(os.Getenv("CONTRALAY_KILLS")); err == nil {
		kills = n
	}
	dir, env := state(t)
	name := copyOfExample(t)
	value, answered := 0, 0
	for n := range kills {
		rng := rand.New(rand.NewPCG(uint64(n), 7))
		cmd := exec.Command(built, name)
		cmd.Env = environ(t, env)
		f, err := pty.StartWithSize(cmd, &pty.Winsize{Cols: 100, Rows: 30})
		if err != nil {
			t.Skipf("no pseudo-terminal can be opened here: %v", err)
		}
		var seen, drawn atomic.Int64
		ended := make(chan struct{})
		go func() {
			defer close(ended)
			var all bytes.Buffer
			buf := make([]byte, 1<<14)
			for {
				k, err := f.Read(buf)
				all.Write(buf[:k])
				drawn.Store(int64(all.Len()))
				if m := nowAmps.FindAllStringSubmatch(all.String(), -1); m != nil {
					v, _ := strconv.Atoi(m[len(m)-1][1])
					seen.Store(int64(v))
				}
				if err != nil {
					return
				}
			}
		}()
		// Every other bench is pressed only once it has drawn itself, and killed only once it has
		// answered, however slow the machine is; the rest at any instant.
		waitFor := func(count *atomic.Int64, most int64, meanwhile func()) {
			for late := time.Now().Add(patience); n%2 == 0 && count.Load() <= most && time.Now().Before(late); {
				time.Sleep(time.Duration(1+rng.IntN(5)) * time.Millisecond)
				meanwhile()
			}
		}
		const oneScreen = 500 // bytes, less than any screen is
		waitFor(&drawn, oneScreen, func() {})
		// Left work is taken up by Enter where it is offered; where not, Enter opens
		// the wire and Left closes it again.
		time.Sleep(60 * time.Millisecond)
		fmt.Fprint(f, enter)
		time.Sleep(10 * time.Millisecond)
		fmt.Fprint(f, left)
		last := time.Now()
		press := func() {
			value, last = value%900+1, time.Now()
			fmt.Fprintf(f, "%d%s", value, enter)
		}
		stop := time.Now().Add(time.Duration(rng.IntN(120)) * time.Millisecond)
		for time.Now().Before(stop) {
			press()
			if rng.IntN(4) == 0 {
				fmt.Fprint(f, "s")
			}
			time.Sleep(time.Duration(rng.IntN(12)) * time.Millisecond)
		}
		// The answer to a current may have been drawn over by that of a save: it is asked for again.
		waitFor(&seen, 0, func() {
			if time.Since(last) > 200*time.Millisecond {
				press()
			}
		})
		_ = cmd.Process.Kill()
		_ = cmd.Wait()
		f.Close()
		<-ended

		d, err := file.Load(name)
		if err != nil {
			t.Fatalf("kill %d: the file is not whole: %v", n, err)
		}
		have := map[int]bool{int(d.Harness.Wires[0].Amps.V): true}
		works, _, _ := file.Left(dir, name)
		for _, w := range works {
			have[int(w.Doc.Harness.Wires[0].Amps.V)] = true
		}
		v := int(seen.Load())
		if v == 0 {
			continue
		}
		answered++
		ok := false
		for a := range have {
			ok = ok || (a-v+900)%900 <= 40 // what was seen, or what came after it
		}
		if !ok {
			t.Fatalf("kill %d: the screen had %d A, file and journal have %v", n, v, have)
		}
	}
	if answered < kills/2 {
		t.Errorf("only %d of %d benches had answered a key before they were killed: this tests nothing", answered, kills)
	}
	halves := func() int {
		return len(slices.DeleteFunc(append(filesIn(t, filepath.Dir(name)), filesIn(t, dir)...), func(n string) bool {
			return !strings.HasSuffix(n, ".tmp")
		}))
	}
	before := halves()
	s := start(t, 100, 30, []string{env}, name) // the next start sweeps what they were writing
	s.see("saved")
	s.signal(syscall.SIGTERM)
	s.ends()
	if n := halves(); n > 0 {
		t.Errorf("%d of %d files that were being written remain", n, before)
	}
	t.Logf("%d kills, %d had answered, %d files that were being written were swept", kills, answered, before)
}
