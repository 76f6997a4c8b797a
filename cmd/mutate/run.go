package main

import (
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"sort"
	"strconv"
	"strings"
	"time"
)

// What can become of a mutant.
const (
	killed   = "killed"
	timedOut = "timed out"
	survived = "survived"
	unseen   = "not reached" // by any test: it survives too
)

// A trial is a place to build in, and the tests that mutants are run against.
type trial struct {
	dir      string // where go is called
	work     string // binaries, copies
	overlay  string
	short    bool
	patience time.Duration  // what tests may take beyond five times their own
	only     *regexp.Regexp // the tests that are run, by their names; nil: all
	most     time.Duration  // what the tests of other packages may take for one mutant; 0: all are run
	drawn    []*mutant
	packages []*tested
	say      func(format string, a ...any)
}

// A tested package is one whose tests can reach a mutant.
type tested struct {
	path, dir, binary string
	deps              map[string]bool
	flags             []string
	tests             []test
}

// A test is one function of a test, how long it took and which mutants it reached.
type test struct {
	name    string
	took    time.Duration
	reaches map[int]bool
}

// find lists the packages with tests that reach a changed package: its own and those of some patterns.
func (t *trial) find(patterns []string) error {
	changed := map[string]bool{}
	for _, m := range t.drawn {
		changed[m.room.path] = true
	}
	for path := range changed {
		patterns = append(patterns, path)
	}
	slices.Sort(patterns)
	all, err := goList(t.dir, append([]string{"-json=ImportPath,Dir,TestGoFiles,XTestGoFiles"}, patterns...)...)
	if err != nil {
		return err
	}
	tests := map[string]listed{}
	var names []string
	for _, l := range all {
		if len(l.TestGoFiles)+len(l.XTestGoFiles) > 0 {
			tests[l.ImportPath] = l
			names = append(names, l.ImportPath)
		}
	}
	if len(names) == 0 {
		return errors.New("there are no tests")
	}
	withTests, err := goList(t.dir, append([]string{"-test", "-json=ImportPath,Deps"}, names...)...)
	if err != nil {
		return err
	}
	for _, l := range withTests {
		path, is := strings.CutSuffix(l.ImportPath, ".test")
		if !is {
			continue
		}
		p := &tested{path: path, dir: tests[path].Dir, deps: map[string]bool{path: true}}
		reaches := changed[path]
		for _, d := range l.Deps {
			d, _, _ = strings.Cut(d, " ")
			p.deps[d] = true
			reaches = reaches || changed[d]
		}
		if p.deps["pgregory.net/rapid"] {
			// Without a file, or the next run would try again what this one left; fewer draws, or one mutant takes minutes.
			p.flags = []string{"-rapid.nofailfile", "-rapid.checks=20"}
		}
		if reaches {
			t.packages = append(t.packages, p)
		}
	}
	sort.Slice(t.packages, func(i, j int) bool { return t.packages[i].path < t.packages[j].path })
	return nil
}

// write puts the changed copies beside the packages, by an overlay.
func (t *trial) write() error {
	replace := map[string]string{}
	put := func(abs, text string) error {
		name := filepath.Join(t.work, fmt.Sprintf("copy%d.go", len(replace)))
		replace[abs] = name
		return os.WriteFile(name, []byte(text), 0o600)
	}
	byRoom := map[*room][]*mutant{}
	for _, m := range t.drawn {
		byRoom[m.room] = append(byRoom[m.room], m)
	}
	for r, of := range byRoom {
		texts, _ := r.instrumented(of)
		for s, text := range texts {
			if err := put(s.abs, text); err != nil {
				return err
			}
		}
		if err := put(filepath.Join(r.dir, helperName), helper(r.name)); err != nil {
			return err
		}
	}
	t.overlay = filepath.Join(t.work, "overlay.json")
	return writeOverlay(t.overlay, replace)
}

func writeOverlay(name string, replace map[string]string) error {
	text, err := json.Marshal(map[string]any{"Replace": replace})
	if err != nil {
		return err
	}
	return os.WriteFile(name, text, 0o600)
}

// compile makes the binary of a package's tests.
func (t *trial) compile(p *tested, overlay, name string) (string, error) {
	binary := filepath.Join(t.work, name)
	cmd := exec.Command("go", "test", "-c", "-vet=off", "-overlay", overlay, "-o", binary, p.path)
	cmd.Dir = t.dir
	if says, err := cmd.CombinedOutput(); err != nil {
		return "", fmt.Errorf("the tests of %s do not compile: %w\n%s", p.path, err, says)
	}
	return binary, nil
}

// call runs some tests of a package; all of them where none is named. A test that eats all memory dies of it alone.
func (t *trial) call(p *tested, binary string, names []string, most time.Duration, env ...string) (string, error) {
	quoted := make([]string, len(names))
	for i, n := range names {
		quoted[i] = regexp.QuoteMeta(n)
	}
	args := []string{"-test.failfast", "-test.timeout=0"}
	if len(names) > 0 {
		args = append(args, "-test.run=^("+strings.Join(quoted, "|")+")$")
	}
	if t.short {
		args = append(args, "-test.short")
	}
	ctx, cancel := context.WithTimeout(context.Background(), most)
	defer cancel()
	within := []string{"-c", `ulimit -v 12000000; exec "$0" "$@"`, binary}
	cmd := exec.CommandContext(ctx, "sh", slices.Concat(within, args, p.flags)...)
	cmd.Dir = p.dir
	cmd.Env = append(os.Environ(), env...)
	cmd.WaitDelay = time.Second
	var out bytes.Buffer
	cmd.Stdout, cmd.Stderr = &out, &out
	err := cmd.Run()
	if ctx.Err() != nil {
		err = ctx.Err()
	}
	return out.String(), err
}

// measure runs every test alone, without any fault: how long it takes, what it reaches. One that
// fails so is left out, and said.
func (t *trial) measure() error {
	for i, p := range t.packages {
		var err error
		if p.binary, err = t.compile(p, t.overlay, fmt.Sprintf("p%d.test", i)); err != nil {
			return err
		}
		list := exec.Command(p.binary, "-test.list=.")
		list.Dir = p.dir
		names, err := list.Output()
		if err != nil {
			return fmt.Errorf("%s does not list its tests: %w", p.path, err)
		}
		var all time.Duration
		for _, name := range strings.Fields(string(names)) {
			if strings.HasPrefix(name, "Benchmark") || t.only != nil && !t.only.MatchString(name) {
				continue
			}
			reached := filepath.Join(t.work, "reached")
			_ = os.Remove(reached) // there may be none
			start := time.Now()
			says, err := t.call(p, p.binary, []string{name}, 10*time.Minute, reachKey+"="+reached)
			one := test{name: name, took: time.Since(start), reaches: map[int]bool{}}
			if err != nil {
				t.say("left out, it fails without a fault: %s %s: %v\n%s", p.path, name, err, says)
				continue
			}
			all += one.took
			text, _ := os.ReadFile(reached) // there is none where nothing was reached
			for _, line := range strings.Fields(string(text)) {
				id, err := strconv.Atoi(line)
				if err != nil {
					return err
				}
				one.reaches[id] = true
			}
			p.tests = append(p.tests, one)
		}
		t.say("%d of %d: %s, %d tests, %.1f s", i+1, len(t.packages), p.path, len(p.tests), all.Seconds())
	}
	return nil
}

// A verdict is what became of a mutant, and which test noticed.
type verdict struct{ what, by string }

// A batch is tests of one package that are run in one go.
type batch struct {
	p     *tested
	names []string
	took  time.Duration
}

// quick is how long a test may take to come before all that take longer, its own package's apart.
const quick = 500 * time.Millisecond

// batches are the tests that a mutant meets, in order: its own package's, the quick ones of the others, the slow ones; the
// least first. Slow ones that would take the whole beyond what is allowed are left out.
func (t *trial) batches(m *mutant) []batch {
	var own, fast, slow []batch
	for _, p := range t.packages {
		if !p.deps[m.room.path] {
			continue
		}
		b, more := batch{p: p}, batch{p: p}
		for _, x := range p.tests {
			if !x.reaches[m.id] && m.whole != nil {
				continue
			}
			to := &b
			if x.took > quick && p.path != m.room.path {
				to = &more
			}
			to.names = append(to.names, x.name)
			to.took += x.took
		}
		if p.path == m.room.path {
			own = append(own, b)
			continue
		}
		fast, slow = append(fast, b), append(slow, more)
	}
	all := own
	used := time.Duration(0)
	for _, some := range [][]batch{fast, slow} {
		sort.SliceStable(some, func(i, j int) bool { return some[i].took < some[j].took })
		for _, b := range some {
			if used += b.took; t.most <= 0 || used <= t.most {
				all = append(all, b)
			}
		}
	}
	return slices.DeleteFunc(all, func(b batch) bool { return len(b.names) == 0 })
}

// judge runs a mutant against the tests that reach it, up to the first that fails.
func (t *trial) judge(m *mutant) (verdict, error) {
	all := t.batches(m)
	if len(all) == 0 {
		return verdict{what: unseen}, nil
	}
	start := time.Now()
	for _, b := range all {
		binary := b.p.binary
		if m.whole == nil {
			if b.p.path != m.room.path && t.most > 0 && time.Since(start) > t.most {
				break // each package is compiled anew for it
			}
			overlay, name := filepath.Join(t.work, "alone.json"), filepath.Join(t.work, "alone.go")
			if err := os.WriteFile(name, []byte(m.alone()), 0o600); err != nil {
				return verdict{}, err
			}
			if err := writeOverlay(overlay, map[string]string{m.file.abs: name}); err != nil {
				return verdict{}, err
			}
			var err error
			if binary, err = t.compile(b.p, overlay, "alone.test"); err != nil {
				return verdict{what: killed, by: "the tests' own code, which does not compile"}, nil
			}
		}
		says, err := t.call(b.p, binary, b.names, 5*b.took+t.patience, onKey+"="+strconv.Itoa(m.id))
		switch {
		case errors.Is(err, context.DeadlineExceeded):
			return verdict{what: timedOut, by: b.p.path}, nil
		case err != nil:
			return verdict{what: killed, by: b.p.path + " " + firstFailure(says)}, nil
		}
	}
	return verdict{what: survived}, nil
}

// firstFailure is the name of the test that failed.
func firstFailure(says string) string {
	for line := range strings.Lines(says) {
		if _, after, is := strings.Cut(line, "--- FAIL: "); is {
			name, _, _ := strings.Cut(after, " ")
			return strings.TrimSpace(name)
		}
	}
	if strings.Contains(says, "panic:") {
		return "(panic)"
	}
	return ""
}
