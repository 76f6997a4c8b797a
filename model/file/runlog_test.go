package file

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"sync"
	"testing"

	"contralay/model"
)

// loom is a harness's file with one serial, and a document of it.
func loom(t *testing.T) (path string, d Document) {
	t.Helper()
	path = filepath.Join(t.TempDir(), "loom.toml")
	d = Document{Harness: model.Harness{Builds: []model.Build{{Serial: "1"}}}}
	if err := Save(path, d); err != nil {
		t.Fatal(err)
	}
	return path, d
}

// logOn opens the log of a file as a bench would.
func logOn(t *testing.T, path string) *RunLog {
	t.Helper()
	d, err := Load(path)
	if err != nil {
		t.Fatal(err)
	}
	l, err := OpenRunLog(path, Sum(path), d)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { l.Close(false) })
	return l
}

// ticks is builds with steps more.
func ticks(builds []model.Build, keys ...string) []model.Build {
	h := model.Harness{Builds: builds}
	return h.EditBuild("1", func(b *model.Build) {
		for _, k := range keys {
			b.Tick(model.Ticked{Key: k, By: model.Some("of " + k)})
		}
	}).Builds
}

func keysOf(builds []model.Build) string { return strings.Join(builds[0].Keys(), " ") }

// append1 ticks on top of what a bench has.
func append1(t *testing.T, l *RunLog, has []model.Build, keys ...string) []model.Build {
	t.Helper()
	now := ticks(has, keys...)
	if err := l.Append(now, l.design); err != nil {
		t.Fatal(err)
	}
	return now
}

// What one bench ticks another sees; both save; nothing lies beside the file in the end, and nobody is
// asked whether to write over what the other saved.
func TestRunLogBetweenTwo(t *testing.T) {
	path, d := loom(t)
	a, b := logOn(t, path), logOn(t, path)
	if b.Look() {
		t.Error("there is nothing to see")
	}
	has := append1(t, a, a.Take().Builds, "cut 1")
	if !b.Look() {
		t.Fatal("the other sees nothing")
	}
	got := b.Take()
	if keysOf(got.Builds) != "cut 1" || len(got.Lines) != 1 || len(got.Says) != 0 {
		t.Errorf("%+v", got)
	}
	if b.Look() || a.Look() {
		t.Error("seen twice, or one's own")
	}
	append1(t, b, got.Builds, "cut 2")
	has = append1(t, a, has, "cut 3") // without having seen cut 2
	if got := a.Take(); keysOf(got.Builds) != "cut 1 cut 2 cut 3" {
		t.Errorf("%s", keysOf(got.Builds))
	}
	append1(t, a, ticks(has, "cut 2"), "cut 4")
	if b.Look(); keysOf(b.Take().Builds) != "cut 1 cut 2 cut 3 cut 4" {
		t.Error(keysOf(b.Take().Builds))
	}
	saved := 0
	save := func(d Document) error { saved++; return Save(path, d) }
	d.Harness.Builds = a.Take().Builds
	if _, err := a.Fold(d, save); err != nil || saved != 1 {
		t.Fatal(err)
	}
	if at, _ := Load(path); keysOf(at.Harness.Builds) != "cut 1 cut 2 cut 3 cut 4" {
		t.Error(keysOf(at.Harness.Builds))
	}
	if !b.Look() {
		t.Fatal("the other does not see that it is saved")
	}
	if got := b.Take(); !got.Saved || keysOf(got.As) != "cut 1 cut 2 cut 3 cut 4" || b.Base() != Sum(path) {
		t.Errorf("%+v, base %s", got, b.Base())
	}
	has = append1(t, b, b.Builds(), "cut 5")
	third := logOn(t, path) // one that opens it now sees what is not saved
	if got := third.Take(); keysOf(got.Builds) != "cut 1 cut 2 cut 3 cut 4 cut 5" ||
		!strings.Contains(strings.Join(got.Says, ""), "1 entry") {
		t.Errorf("%+v", got)
	}
	third.Close(false)
	a.Close(false)
	d.Harness.Builds = has
	if _, err := b.Fold(d, save); err != nil {
		t.Fatal(err)
	}
	if left, _ := filepath.Glob(filepath.Dir(path) + "/*.run"); len(left) != 0 {
		t.Errorf("saved by the last, and %v lies there", left)
	}
	if left, _ := os.ReadDir(filepath.Dir(path)); len(left) != 2 { // and its .bak
		t.Errorf("%v", left)
	}
}

// The one who ticks a step first has it; the other hears so.
func TestRunLogFirstNameCounts(t *testing.T) {
	path, _ := loom(t)
	a, b := logOn(t, path), logOn(t, path)
	by := func(l *RunLog, who string) {
		h := model.Harness{Builds: l.Builds()}
		h = *h.EditBuild("1", func(b *model.Build) { b.Tick(model.Ticked{Key: "cut 1", By: model.Some(who)}) })
		if err := l.Append(h.Builds, ""); err != nil {
			t.Fatal(err)
		}
	}
	by(a, "7")
	by(b, "8")
	for _, l := range []*RunLog{a, b} {
		l.Look()
		if got := l.Take().Builds[0].Steps; len(got) != 1 || got[0].By.V != "7" {
			t.Errorf("%+v", got)
		}
	}
}

// Many benches tick at once, from many goroutines: no line is lost, none is torn.
func TestRunLogManyAtOnce(t *testing.T) {
	path, _ := loom(t)
	var wait sync.WaitGroup
	const benches, each = 4, 12
	for n := range benches {
		l := logOn(t, path)
		wait.Add(1)
		go func() {
			defer wait.Done()
			for k := range each {
				if err := l.Append(ticks(l.Take().Builds, fmt.Sprintf("cut %d %d", n, k)), ""); err != nil {
					t.Error(err)
				}
				l.Look()
			}
		}()
	}
	wait.Wait()
	if got := logOn(t, path).Builds(); len(got[0].Steps) != benches*each {
		t.Errorf("%d of %d", len(got[0].Steps), benches*each)
	}
}

// A bench that is killed at any byte of a line: what was whole is there, the half line is left out and
// said once, and the next line stands by itself.
func TestRunLogTorn(t *testing.T) {
	path, _ := loom(t)
	l := logOn(t, path)
	has := append1(t, l, l.Take().Builds, "cut 1")
	one, _ := os.ReadFile(path + ".run")
	append1(t, l, has, "cut 2")
	two, _ := os.ReadFile(path + ".run")
	l.leave()
	for cut := len(one); cut < len(two); cut += 7 {
		if err := os.WriteFile(path+".run", two[:cut], 0o644); err != nil {
			t.Fatal(err)
		}
		l := logOn(t, path)
		got := l.Take()
		if said := strings.Contains(strings.Join(got.Says, "\n"), "half written"); keysOf(got.Builds) != "cut 1" ||
			said != (cut > len(one)) {
			t.Fatalf("cut at %d of %d: %+v", cut, len(two), got)
		}
		append1(t, l, got.Builds, "cut 3")
		l.leave()
		again := logOn(t, path)
		if got := again.Take(); keysOf(got.Builds) != "cut 1 cut 3" || strings.Contains(strings.Join(got.Says, "\n"), "half") {
			t.Fatalf("cut at %d: %+v", cut, got)
		}
		again.leave()
	}
	for _, cut := range []int{0, 5, 20} { // within the first line
		if err := os.WriteFile(path+".run", two[:cut], 0o644); err != nil {
			t.Fatal(err)
		}
		l := logOn(t, path)
		append1(t, l, l.Take().Builds, "cut 4")
		l.leave()
		if got := logOn(t, path); keysOf(got.Builds()) != "cut 4" {
			t.Errorf("cut at %d: %s", cut, keysOf(got.Builds()))
		}
	}
}

// A log that is not of contralay, or holds what it must not, is refused with its line, and stays as it is.
func TestRunLogHostile(t *testing.T) {
	path, d := loom(t)
	l := logOn(t, path)
	append1(t, l, l.Take().Builds, "cut 1")
	good, _ := os.ReadFile(path + ".run")
	l.leave()
	for _, c := range []struct{ text, says string }{
		{"format = 1\n", "line 1: it is no run log"},
		{string(good) + "rubbish\n", "line 3: it is no line of a run log"},
		{string(good) + `{"serial":"1","is":{"revision":"a\u001b[2J\u202e"}}` + "\n", "line 3: key revision"},
		{string(good[:len(good)-2]) + "\x00\n", "line 2:"},
		{strings.Replace(string(good), "log 1", "log 9", 1), "newer contralay"},
	} {
		if err := os.WriteFile(path+".run", []byte(c.text), 0o644); err != nil {
			t.Fatal(err)
		}
		_, err := OpenRunLog(path, Sum(path), d)
		if err == nil || !strings.Contains(err.Error(), c.says) || !strings.Contains(err.Error(), path+".run") ||
			strings.ContainsAny(err.Error(), "\x1b\u202e") {
			t.Errorf("%q: %v", c.text, err)
		}
		if now, _ := os.ReadFile(path + ".run"); string(now) != c.text {
			t.Errorf("it was changed: %q", now)
		}
	}
	_ = os.Remove(path + ".run")
	if err := os.Mkdir(path+".run", 0o755); err != nil {
		t.Fatal(err)
	}
	if _, err := OpenRunLog(path, Sum(path), d); err == nil || !strings.Contains(err.Error(), "folder") {
		t.Errorf("a folder: %v", err)
	}
	_ = os.Remove(path + ".run")
	l = logOn(t, path) // and while it is open: nothing is ticked over it
	has := append1(t, l, l.Take().Builds, "cut 1")
	f, _ := os.OpenFile(path+".run", os.O_APPEND|os.O_WRONLY, 0)
	_, _ = f.WriteString("rubbish\n")
	f.Close()
	if !l.Look() || !strings.Contains(strings.Join(l.Take().Says, ""), "line 3") || !strings.Contains(l.Refuses(), "line 3") {
		t.Error("nothing says that it cannot be read on")
	}
	if err := l.Append(ticks(has, "cut 2"), ""); err == nil {
		t.Error("ticked over it")
	}
	if l.Look() {
		t.Error("said twice")
	}
}

// A kill between the log, the file and the log again: the next bench has everything once.
func TestRunLogKilledWhileSaving(t *testing.T) {
	test := model.Test{Net: model.Some("A B")} // twice would show
	for _, c := range []struct {
		name string
		save func(path string, d Document) error // the bench dies after it
	}{
		{"before the file is written", func(string, Document) error { return errors.New("killed") }},
		{"after the file is written", func(path string, d Document) error {
			if err := Save(path, d); err != nil {
				t.Fatal(err)
			}
			return errors.New("killed")
		}},
	} {
		path, d := loom(t)
		l := logOn(t, path)
		has := l.Take().Builds
		d.Harness.Builds = (&model.Harness{Builds: has}).EditBuild("1", func(b *model.Build) { b.Tests = append(b.Tests, test) }).Builds
		if err := l.Append(d.Harness.Builds, ""); err != nil {
			t.Fatal(err)
		}
		if _, err := l.Fold(d, func(d Document) error { return c.save(path, d) }); err == nil {
			t.Fatal("no error")
		}
		l.leave()
		if got := logOn(t, path).Take(); len(got.Builds[0].Tests) != 1 {
			t.Errorf("%s: %d tests", c.name, len(got.Builds[0].Tests))
		}
	}
}

// A file that somebody edits by hand after a save has what was saved: only what came after it counts.
func TestRunLogFileEditedByHand(t *testing.T) {
	path, d := loom(t)
	a, b := logOn(t, path), logOn(t, path)
	has := append1(t, a, a.Take().Builds, "cut 1")
	b.Look()
	d.Harness.Builds = has
	if _, err := a.Fold(d, func(d Document) error { return Save(path, d) }); err != nil {
		t.Fatal(err)
	}
	append1(t, a, has, "cut 2")
	text, _ := os.ReadFile(path)
	if err := os.WriteFile(path, append([]byte("# by hand\n"), text...), 0o644); err != nil {
		t.Fatal(err)
	}
	if got := logOn(t, path).Take(); keysOf(got.Builds) != "cut 1 cut 2" || len(got.Builds[0].Steps) != 2 {
		t.Errorf("%+v", got.Builds)
	}
}

// Where the log cannot be written, nothing may be ticked as long as another bench builds.
func TestRunLogThatCannotBeWritten(t *testing.T) {
	path, _ := loom(t)
	l := logOn(t, path)
	l.barred = errors.New("permission denied")
	if says := l.Refuses(); says != "" {
		t.Errorf("nobody else is there: %s", says)
	}
	other := logOn(t, path)
	append1(t, other, other.Take().Builds, "cut 1")
	l.Look()
	if says := l.Refuses(); !strings.Contains(says, "another bench builds from this file") || !strings.Contains(says, "permission denied") {
		t.Errorf("%q", says)
	}
	if keysOf(l.Take().Builds) != "cut 1" {
		t.Error("it is not read either")
	}
	dir := filepath.Dir(path) // truly so
	if err := os.Chmod(dir, 0o500); err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = os.Chmod(dir, 0o700) })
	if f, err := os.Create(filepath.Join(dir, "x")); err == nil {
		f.Close()
		t.Skip("nothing is read-only for this user")
	}
	if says := logOn(t, path).Refuses(); !strings.Contains(says, "another bench builds") {
		t.Errorf("%q", says)
	}
}

// What is left without saving goes away with the last bench, and only with the last.
func TestRunLogLeftWithoutSaving(t *testing.T) {
	path, _ := loom(t)
	a, b := logOn(t, path), logOn(t, path)
	append1(t, a, a.Take().Builds, "cut 1")
	b.Look()
	a.Close(true)
	if _, err := os.Stat(path + ".run"); err != nil {
		t.Fatal("gone, and the other has it open")
	}
	b.Close(true)
	if _, err := os.Stat(path + ".run"); err == nil {
		t.Error("it is still there")
	}
	if got := logOn(t, path).Builds(); !reflect.DeepEqual(got, []model.Build{{Serial: "1"}}) {
		t.Errorf("%+v", got)
	}
}
