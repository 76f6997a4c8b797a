package main

import (
	"fmt"
	"net"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"syscall"
	"testing"
	"time"

	"contralay/cmd/contralay/keep"
	"contralay/model/catalogue"
	"contralay/model/file"
	"contralay/model/shorttest"
)

// odd is things that stand where a file should: each a path and what it is called.
func odd(t *testing.T, ending string) map[string]string {
	t.Helper()
	dir := t.TempDir()
	at := func(name string) string { return filepath.Join(dir, name+ending) }
	if err := makePipe(at("pipe")); err != nil {
		t.Skip(err)
	}
	l, err := net.Listen("unix", at("s"))
	if err != nil {
		t.Skip(err)
	}
	t.Cleanup(func() { l.Close() })
	if err := os.Mkdir(at("folder"), 0o700); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink("/dev/zero", at("zero")); err != nil {
		t.Skip(err)
	}
	if err := os.WriteFile(at("huge"), nil, 0o600); err != nil {
		t.Fatal(err)
	}
	if err := os.Truncate(at("huge"), 10<<30); err != nil {
		t.Skip(err)
	}
	return map[string]string{at("pipe"): "is a pipe", at("s"): "is a socket", at("folder"): "is a folder", at("zero"): "is a device",
		at("huge"): "is larger than"}
}

// Wherever a file is read, what is none, or has no end, is refused with its name and what it is.
func TestNoFileToRead(t *testing.T) {
	t.Parallel()
	for path, want := range odd(t, ".toml") {
		for _, args := range [][]string{{"check", path}, {"figures", path}, {"sheet", path, "-o", t.TempDir()}, {"measured", path},
			{"compare", path, example}, {"compare", example, path}, {"import", path, "-o", filepath.Join(t.TempDir(), "new.toml")},
			{"check", example, "--catalogue", path}} {
			refused(t, environ(t), path, want, args...)
		}
	}
	for path, want := range odd(t, ".csv") {
		out := filepath.Join(t.TempDir(), "new.toml")
		refused(t, environ(t), path, want, "import", path, "-o", out)
		refused(t, environ(t), path, want, "compare", path, example)
		list := fileOf(t, "list.csv", "wire,from,to\n1,A:1,B:1\n")
		refused(t, environ(t), path, want, "import", list, "-o", out, "--recipe", path)
		if _, err := os.Lstat(out); err == nil {
			t.Errorf("%s: something was written", path)
		}
	}
	for _, name := range []string{"catalogue.toml", "corrections.toml"} {
		for path, want := range odd(t, ".toml") {
			home := t.TempDir()
			own := filepath.Join(home, "contralay", name)
			if err := os.Mkdir(filepath.Dir(own), 0o700); err != nil {
				t.Fatal(err)
			}
			if err := os.Symlink(path, own); err != nil {
				t.Fatal(err)
			}
			refused(t, environ(t, "XDG_CONFIG_HOME="+home), own, want, "check", example)
		}
	}
}

func refused(t *testing.T, env []string, path, want string, args ...string) {
	t.Helper()
	if r := callIn(t, env, "", args...); r.code != usage || r.out != "" || !strings.Contains(r.err, path+" "+want) ||
		strings.Count(r.err, "\n") != 1 {
		t.Errorf("%q: %+v", args, r)
	}
}

// Standard input that does not end is read as far as a file may be, and no further.
func TestEndlessInput(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	for _, args := range [][]string{{"check", "-"}, {"figures", "-"}, {"sheet", "-", "-o", t.TempDir()}} {
		zero, err := os.Open("/dev/zero")
		if err != nil {
			t.Skip(err)
		}
		cmd := exec.Command(built, args...)
		cmd.Env, cmd.Stdin = environ(t), zero
		timer := time.AfterFunc(longestRun, func() { _ = cmd.Process.Kill() })
		out, _ := cmd.CombinedOutput()
		timer.Stop()
		zero.Close()
		if code := cmd.ProcessState.ExitCode(); code != usage || !strings.Contains(string(out), "larger than 8 MiB") {
			t.Errorf("%q: exit %d: %s", args, code, tail(string(out), 300))
		}
	}
}

// Whoever changes the file of the bench is noticed, with a journal and without one: by what the
// file holds, whatever its size and its time.
func TestOutsideChange(t *testing.T) {
	for name, state := range map[string]string{"with a journal": t.TempDir(), "without": fileOf(t, "a file", "")} {
		t.Run(name, func(t *testing.T) {
			path := copyOfExample(t)
			w := world{env: func(key string) string { return map[string]string{"XDG_STATE_HOME": state}[key] }, now: time.Now}
			k := keep.Open(path, w.env, w.now)
			defer k.Close()
			d, err := file.Load(path)
			if err != nil {
				t.Fatal(err)
			}
			if err := k.Keep(d, true); (err != nil) != (name == "without") {
				t.Fatalf("journal: %v", err)
			}
			text := readFile(t, path)
			info, err := os.Stat(path)
			if err != nil {
				t.Fatal(err)
			}
			theirs := strings.Replace(text, "revision = \"A\"", "revision = \"B\"", 1)
			if theirs == text {
				theirs = strings.Replace(text, "amps", "amqs", 1)
			}
			for what, c := range map[string]struct {
				do   func() error
				want bool
			}{
				"nothing": {func() error { return nil }, false},
				"written with the same size and time": {func() error {
					if err := os.WriteFile(path, []byte(theirs), 0o644); err != nil {
						return err
					}
					return os.Chtimes(path, info.ModTime(), info.ModTime())
				}, true},
				"replaced": {func() error {
					other := path + ".other"
					if err := os.WriteFile(other, []byte(theirs), 0o644); err != nil {
						return err
					}
					return os.Rename(other, path)
				}, true},
				"touched": {func() error { return os.Chtimes(path, time.Now(), time.Now().Add(time.Hour)) }, false},
				"removed": {func() error { return os.Remove(path) }, true},
				"a folder in its place": {func() error {
					if err := os.Remove(path); err != nil {
						return err
					}
					return os.Mkdir(path, 0o700)
				}, true},
			} {
				if err := c.do(); err != nil {
					t.Fatal(err)
				}
				if got := k.Changed(path); got != c.want {
					t.Errorf("%s: changed %v", what, got)
				}
				os.RemoveAll(path)
				if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
					t.Fatal(err)
				}
			}
			if err := k.Save(path, d); err != nil || k.Changed(path) {
				t.Errorf("our own save counts as somebody else's (%v)", err)
			}
		})
	}
}

// Without a journal, too, the key that saves does not write over what somebody else wrote.
func TestOutsideChangeOnScreen(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	name := copyOfExample(t)
	s := start(t, 100, 30, []string{"XDG_STATE_HOME=" + fileOf(t, "a file", "")}, name)
	s.see("WIRES")
	s.press("3.5" + enter)
	s.see("NOT SAVED, no journal")
	theirs := strings.Replace(readFile(t, name), "amps", "amps ", 1)
	if err := os.WriteFile(name, []byte(theirs), 0o644); err != nil {
		t.Fatal(err)
	}
	s.press("s")
	s.see("changed or removed")
	if readFile(t, name) != theirs {
		t.Error("theirs was written over")
	}
}

// Unsaved work that is torn is named with its path before the bench opens, and stays; it goes
// with + alone.
func TestTornWorkIsNamed(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	dir, env := state(t)
	s, name := dirty(t, env)
	s.signal(syscall.SIGTERM)
	s.ends()
	var torn string
	for _, n := range filesIn(t, dir) {
		if strings.HasSuffix(n, ".work") || strings.HasSuffix(n, ".work.new") {
			torn = filepath.Join(dir, n)
		}
	}
	if err := os.Truncate(torn, 300); err != nil {
		t.Fatal(err)
	}
	for range 2 {
		s = start(t, 100, 30, []string{env}, name)
		s.see("Unsaved work cannot be read", "It is torn", "It is kept in "+dir[:10], "keep it and go on")
		s.press(enter)
		s.see("WIRES", "stays in")
		s.press("q")
		s.ends()
	}
	if _, err := os.Stat(torn); err != nil {
		t.Fatal(err)
	}
	s = start(t, 100, 30, []string{env}, name)
	s.see("Unsaved work cannot be read", "It is torn")
	s.toRow("delete it")
	s.press(enter)
	s.see("Enter does not delete it")
	s.press("+")
	s.see("WIRES", "it is deleted")
	s.press("q")
	s.ends()
	if left := filesIn(t, dir); len(left) != 0 {
		t.Errorf("%v remain", left)
	}
}

// Several programs accept corrections at the same time, and none loses what another wrote; the
// link to the file stays one, and its mode stays.
func TestCorrectionsOfSeveralPrograms(t *testing.T) {
	t.Parallel()
	home, shared := t.TempDir(), filepath.Join(t.TempDir(), "shop.toml")
	name := filepath.Join(home, "contralay", correctionsName)
	if err := os.Mkdir(filepath.Dir(name), 0o700); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(shared, []byte("# of the shop"), 0o660); err != nil {
		t.Fatal(err)
	}
	if err := os.Chmod(shared, 0o660); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink(shared, name); err != nil {
		t.Skip(err)
	}
	const programs, each = 8, 5
	var all sync.WaitGroup
	for p := range programs {
		all.Go(func() {
			for n := range each {
				c := catalogue.Correction{Of: fmt.Sprintf("wall, %d/%d", p, n), Bias: 0.01, Readings: 9, On: "2026-05-04"}
				if err := appendCorrections(name, c.Text()); err != nil {
					t.Error(err)
				}
			}
		})
	}
	all.Wait()
	text := readFile(t, shared)
	if n := strings.Count(text, "[[correction]]"); n != programs*each || !strings.HasPrefix(text, "# of the shop\n") {
		t.Errorf("%d corrections, %d were accepted:\n%s", n, programs*each, tail(text, 300))
	}
	if info, err := os.Lstat(name); err != nil || info.Mode()&os.ModeSymlink == 0 {
		t.Errorf("the link is none any more (%v)", err)
	}
	if info, err := os.Stat(shared); err != nil || info.Mode().Perm() != 0o660 {
		t.Errorf("its mode is %v (%v)", info.Mode(), err)
	}
	if left := append(filesIn(t, filepath.Dir(shared)), filesIn(t, filepath.Dir(name))...); len(left) != 2 {
		t.Errorf("%v remain", left)
	}
}
