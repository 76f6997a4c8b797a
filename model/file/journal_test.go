package file

import (
	"errors"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"contralay/model"
	"contralay/model/unit"
)

func numbered(n string) Document {
	return Document{Harness: model.Harness{Head: model.Head{Number: model.Some(n)}}}
}

var noon = time.Date(2026, 5, 4, 12, 0, 0, 0, time.UTC)

func opened(t *testing.T, dir, harness string) *Journal {
	t.Helper()
	j, err := OpenJournal(dir, harness, Sum(harness))
	if err != nil {
		t.Fatal(err)
	}
	return j
}

// Work that a bench leaves behind is found, whole, by the next one on the same
// file, under whatever name it reaches it, and by nobody else.
func TestWorkIsLeftBehind(t *testing.T) {
	dir, folder := filepath.Join(t.TempDir(), "deep", "er"), t.TempDir()
	harness := filepath.Join(folder, "loom.toml")
	if err := Save(harness, numbered("old")); err != nil {
		t.Fatal(err)
	}
	j := opened(t, dir, harness)
	for _, n := range []string{"one", "two"} {
		if err := j.Keep(numbered(n), noon, ""); err != nil {
			t.Fatal(err)
		}
	}
	if left, _, busy := Left(dir, harness); len(left) != 0 || busy != 1 {
		t.Errorf("while it is at work: %d left, %d busy", len(left), busy)
	}
	j.Close()
	link := filepath.Join(t.TempDir(), "other.toml")
	if err := os.Symlink(harness, link); err != nil {
		t.Skip(err)
	}
	for _, name := range []string{harness, link, filepath.Join(folder, ".", "loom.toml")} {
		left, _, busy := Left(dir, name)
		if len(left) != 1 || busy != 0 || left[0].Doc.Harness.Head.Number.V != "two" || !left[0].When.Equal(noon) ||
			left[0].Base != Sum(harness) {
			t.Errorf("%s: %+v, %d busy", name, left, busy)
		}
	}
	if left, _, _ := Left(dir, filepath.Join(folder, "another.toml")); len(left) != 0 {
		t.Errorf("another file has %d", len(left))
	}
	left, _, _ := Left(dir, harness)
	if err := left[0].Discard(); err != nil {
		t.Fatal(err)
	}
	if all, err := os.ReadDir(dir); err != nil || len(all) != 0 {
		t.Errorf("%v remain (%v)", all, err)
	}
}

// Two benches on one harness have a journal each; what one that is gone left is not
// written over.
func TestEveryBenchHasItsOwnJournal(t *testing.T) {
	dir := t.TempDir()
	gone := opened(t, dir, "")
	if err := gone.Keep(numbered("gone"), noon, ""); err != nil {
		t.Fatal(err)
	}
	gone.Close()
	a, b := opened(t, dir, ""), opened(t, dir, "")
	for n, j := range map[string]*Journal{"a": a, "b": b} {
		if err := j.Keep(numbered(n), noon.Add(time.Hour), ""); err != nil {
			t.Fatal(err)
		}
	}
	if left, _, busy := Left(dir, ""); busy != 2 || len(left) != 1 || left[0].Doc.Harness.Head.Number.V != "gone" {
		t.Errorf("%d busy, %+v left", busy, left)
	}
	a.Close()
	b.Close()
	left, _, _ := Left(dir, "")
	var have []string
	for _, w := range left {
		have = append(have, w.Doc.Harness.Head.Number.V)
	}
	if len(have) != 3 || have[2] != "gone" {
		t.Errorf("%v, want the newest first and all three", have)
	}
}

// A save empties the journal, and what is kept after it goes by what was saved.
func TestJournalKnowsItsFile(t *testing.T) {
	dir, harness := t.TempDir(), filepath.Join(t.TempDir(), "loom.toml")
	j := opened(t, dir, harness)
	if err := j.Keep(numbered("one"), noon, ""); err != nil {
		t.Fatal(err)
	}
	j.Saved("that of ours")
	if exists(j.path) || exists(j.path+newest) {
		t.Error("saved, and the journal still holds work")
	}
	if err := j.Keep(numbered("more"), noon, ""); err != nil {
		t.Fatal(err)
	}
	j.Close()
	if left, _, _ := Left(dir, harness); len(left) != 1 || left[0].Base != "that of ours" {
		t.Errorf("%+v", left)
	}
}

// A torn journal is no work, never half of one; it is named, and it stays.
func TestTornJournal(t *testing.T) {
	dir := t.TempDir()
	j := opened(t, dir, "")
	if err := j.Keep(numbered("whole"), noon, ""); err != nil {
		t.Fatal(err)
	}
	path := j.path
	j.Close()
	whole, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	for n := range whole {
		if err := os.WriteFile(path, whole[:n], 0o600); err != nil {
			t.Fatal(err)
		}
		left, unread, _ := Left(dir, "")
		if len(left) != 0 {
			t.Fatalf("%d of %d bytes pass for work: %+v", n, len(whole), left[0].Doc)
		}
		want := "is torn: part of it is missing"
		if n == 0 {
			want = "is empty"
		}
		if len(unread) != 1 || unread[0] != (Unread{path, want}) {
			t.Fatalf("%d of %d bytes: %+v", n, len(whole), unread)
		}
	}
	next := opened(t, dir, "")
	defer next.Close()
	if err := next.Keep(numbered("next"), noon, ""); err != nil || next.path == path {
		t.Errorf("the torn one is written over: %v", err)
	}
}

// What is no journal that this program reads is named with its reason.
func TestUnreadJournals(t *testing.T) {
	for name, c := range map[string]struct{ text, want string }{
		"newer":       {firstWords + "2\nof \"\"\nsomething else\n\n", "is of format 2, from a newer contralay"},
		"not ours":    {"a letter home\n", "is no unsaved work of contralay"},
		"a bad value": {firstLine + "\nof \"\"\nwhen noon\n\nx", "is torn"},
		"a newer harness": {firstLine + "\nof \"\"\nwhen 2026-05-04T12:00:00Z\nsum " + SumOf([]byte("format = 99\n")) + "\n\nformat = 99\n",
			"is whole, but this contralay does not read the harness in it"},
	} {
		dir := t.TempDir()
		path := slot(dir, "", 1)
		if err := os.WriteFile(path, []byte(c.text), 0o600); err != nil {
			t.Fatal(err)
		}
		left, unread, _ := Left(dir, "")
		if len(left) != 0 || len(unread) != 1 || unread[0].Path != path || !strings.HasPrefix(unread[0].Says, c.want) {
			t.Errorf("%s: %+v, %+v", name, left, unread)
		}
		if text, err := os.ReadFile(path); err != nil || string(text) != c.text {
			t.Errorf("%s: it was changed (%v)", name, err)
		}
	}
}

// The newest work takes the place of the last good one when it is on disk and not before: where
// the disk refuses it the last good one stays, and the person is told at the next change.
func TestSyncedBeforeItReplaces(t *testing.T) {
	dir := t.TempDir()
	j := opened(t, dir, "")
	keep := func(n string) error { return j.Keep(numbered(n), noon, "") }
	if err := keep("good"); err != nil {
		t.Fatal(err)
	}
	eventually(t, "the first is on disk", func() bool { return exists(j.path) && !exists(j.path+newest) })
	good, err := os.ReadFile(j.path)
	if err != nil {
		t.Fatal(err)
	}
	full := errors.New("the disk is full")
	asked := make(chan struct{}, 9)
	j.mu.Lock()
	j.flush = func(*os.File) error { asked <- struct{}{}; return full }
	j.mu.Unlock()
	if err := keep("newer"); err != nil {
		t.Fatal(err)
	}
	<-asked
	eventually(t, "the change after it says so", func() bool { return errors.Is(keep("newest"), full) })
	if now, err := os.ReadFile(j.path); err != nil || string(now) != string(good) {
		t.Errorf("the last good one is gone (%v)", err)
	}
	j.Close()
	if left, _, _ := Left(dir, ""); len(left) != 1 || left[0].Doc.Harness.Head.Number.V != "newest" {
		t.Errorf("the newest is whole, and %+v is left", left)
	}
	// The power goes, and what was not on disk is half there: the last good one is left, and the
	// other is named.
	if err := os.Truncate(slot(dir, "", 1)+newest, 40); err != nil {
		t.Fatal(err)
	}
	left, unread, _ := Left(dir, "")
	if len(left) != 1 || left[0].Doc.Harness.Head.Number.V != "good" || len(unread) != 1 {
		t.Errorf("%+v left, %+v unread", left, unread)
	}
}

// eventually waits for what another goroutine does.
func eventually(t *testing.T, what string, is func() bool) {
	t.Helper()
	for range 2000 {
		if is() {
			return
		}
		time.Sleep(5 * time.Millisecond)
	}
	t.Fatal("it never came that " + what)
}

func TestJournalWithoutPlace(t *testing.T) {
	file := filepath.Join(t.TempDir(), "file")
	if err := os.WriteFile(file, nil, 0o600); err != nil {
		t.Fatal(err)
	}
	if _, err := OpenJournal(filepath.Join(file, "in it"), "", ""); err == nil {
		t.Error("a journal in a file that is no folder")
	}
}

func TestDifferences(t *testing.T) {
	a, err := Load(filepath.Join("..", "..", "testdata", "every-key.toml"))
	if err != nil {
		t.Fatal(err)
	}
	if d := Differences(a, a); len(d) != 0 {
		t.Errorf("with itself: %q", d)
	}
	b := a
	h := a.Harness
	h.Wires = slices.Clone(h.Wires)
	h.Wires[0].Size = "18"
	h.Wires = append(h.Wires[:2:2], h.Wires[3:]...)
	h.Branches = slices.Clone(h.Branches)
	h.Branches[0].Layers = slices.Clone(h.Branches[0].Layers)
	h.Branches[0].Layers[1].Fillers = model.Some(2)
	h.Branches[0].Layers[1].FillerMM = model.Opt[unit.Millimetre]{}
	h.Reels = append(slices.Clone(h.Reels), model.Reel{Spec: "X", Size: "20", OverMM: 1.2})
	b.Harness = h
	got := strings.Join(Differences(a, b), "\n")
	for _, want := range []string{
		`wire ` + a.Harness.Wires[0].ID + `: size is "18"; it was "` + a.Harness.Wires[0].Size + `"`,
		`wire ` + a.Harness.Wires[2].ID + " was removed",
		`branch T1, layer 1: fillers is 2; it was 1`,
		`branch T1, layer 1: filler_mm was 1.09; now it is not given`,
		`reel 2 is new`,
	} {
		if !strings.Contains(got, want) {
			t.Errorf("%q is not in\n%s", want, got)
		}
	}
	if n := strings.Count(got, "\n") + 1; n != 5 {
		t.Errorf("%d lines, want 5:\n%s", n, got)
	}
}
