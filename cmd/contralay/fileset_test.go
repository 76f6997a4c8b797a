package main

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"

	"contralay/ui/paper/filename"

	"pgregory.net/rapid"
)

// inFolder is what stands in a folder, by name.
func inFolder(t *testing.T, dir string) map[string]string {
	t.Helper()
	out := map[string]string{}
	all, err := os.ReadDir(dir)
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range all {
		text, err := os.ReadFile(filepath.Join(dir, e.Name()))
		if err != nil {
			t.Fatal(err)
		}
		out[e.Name()] = string(text)
	}
	return out
}

// The old and the new set of these tests, and a file of another sheet.
var (
	oldSet = map[string][]byte{"A.html": []byte("old"), "A-pins.csv": []byte("old"), "A-feeds.csv": []byte("old")}
	newSet = map[string][]byte{"A.html": []byte("new"), "A-pins.csv": []byte("new"), "A-cut.csv": []byte("new"), "A-feeds.csv": nil}
	isOld  = map[string]string{"A.html": "old", "A-pins.csv": "old", "A-feeds.csv": "old", "B.html": "other"}
	isNew  = map[string]string{"A.html": "new", "A-pins.csv": "new", "A-cut.csv": "new", "B.html": "other"}
)

func folderOfOld(t *testing.T) string {
	t.Helper()
	dir := filepath.Join(t.TempDir(), "out")
	if err := writeAll(dir, oldSet); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(filepath.Join(dir, "B.html"), []byte("other"), 0o644); err != nil {
		t.Fatal(err)
	}
	return dir
}

// A set replaces the one before it, and what it lacks goes.
func TestSetReplacesSet(t *testing.T) {
	dir := folderOfOld(t)
	if got := inFolder(t, dir); !reflect.DeepEqual(got, isOld) {
		t.Fatalf("got %v", got)
	}
	if err := writeAll(dir, newSet); err != nil {
		t.Fatal(err)
	}
	if got := inFolder(t, dir); !reflect.DeepEqual(got, isNew) {
		t.Errorf("got %v", got)
	}
}

// Whichever file cannot be moved, the old set is as it was and nothing is left behind; and a
// run that is killed at any of its moves leaves, after the next run's sweep, the old set whole
// or the new one whole.
func TestSetIsWholeOrNotThere(t *testing.T) {
	refused := errors.New("refused")
	olds, news := 0, 0
	for at := 0; ; at++ {
		reached := false
		stop := func(act func()) func(from, to string) error {
			n := -1
			return func(from, to string) error {
				if n++; n == at {
					reached = true
					act()
					return refused
				}
				return os.Rename(from, to)
			}
		}
		dir := folderOfOld(t)
		err := replaceAll(dir, newSet, stop(func() {}))
		if !reached {
			break
		}
		if got := inFolder(t, dir); !errors.Is(err, refused) || !reflect.DeepEqual(got, isOld) {
			t.Errorf("move %d refused: %v, %v", at, err, got)
		}
		dir = folderOfOld(t)
		func() {
			defer func() { _ = recover() }()
			_ = replaceAll(dir, newSet, stop(func() { panic("killed") }))
		}()
		if err := sweep(dir); err != nil {
			t.Fatal(err)
		}
		switch got := inFolder(t, dir); {
		case reflect.DeepEqual(got, isOld):
			olds++
		case reflect.DeepEqual(got, isNew):
			news++
		default:
			t.Errorf("killed at move %d: %v", at, got)
		}
	}
	if olds != 1 || news < 6 { // old before the list is there, new from then on
		t.Errorf("%d times old, %d times new: the test does not reach what it is for", olds, news)
	}
}

// A folder where a file should be, or a link, is not written through: the message says so,
// and that nothing was written.
func TestSetSparesWhatIsNoFile(t *testing.T) {
	for name, make := range map[string]func(at string) error{
		"a folder": func(at string) error { return os.Mkdir(at, 0o755) },
		"a link":   func(at string) error { return os.Symlink("/dev/null", at) },
	} {
		dir := folderOfOld(t)
		at := filepath.Join(dir, "A-cut.csv")
		if err := make(at); err != nil {
			t.Fatal(err)
		}
		err := writeAll(dir, newSet)
		if err == nil || !strings.Contains(err.Error(), "as they were") ||
			!strings.HasSuffix(err.Error(), "A-cut.csv is not a plain file") {
			t.Errorf("%s: %v", name, err)
		}
		if err := os.Remove(at); err != nil {
			t.Error(err)
		}
		if got := inFolder(t, dir); !reflect.DeepEqual(got, isOld) {
			t.Errorf("%s: %v", name, got)
		}
	}
}

// Two numbers and revisions that differ give two names, whatever they hold and on a disk that
// does not tell capitals too; a name is one path element that any disk takes, and says the
// revision.
func TestNamesNeverCollide(t *testing.T) {
	type named struct{ number, revision string }
	for _, pair := range [][2]named{
		{{"HC2/1", "A"}, {"HC2:1", "A"}}, {{"HC2-1", "A"}, {"HC2/1", "A"}}, {{"A-B", "C"}, {"A", "B-C"}}, {{"A", ""}, {"", "A"}},
		{{"A-B", ""}, {"A", "B"}}, {{"hc2", "A"}, {"HC2", "A"}}, {{"HC2", "a"}, {"HC2", "A"}}, {{".HC2", "A"}, {"HC2", "A"}},
		{{strings.Repeat("L", 80), "A"}, {strings.Repeat("L", 80), "B"}}, {{strings.Repeat("L", 80), "A"}, {strings.Repeat("L", 81), "A"}},
		{{"", ""}, {"harness", ""}}, {{"\u00e9", "A"}, {"e\u0301", "A"}}, {{"HC2", "A "}, {"HC2", "A"}}, {{"CON", ""}, {"con", ""}},
	} {
		a, b := filename.Sheet(pair[0].number, pair[0].revision), filename.Sheet(pair[1].number, pair[1].revision)
		if strings.EqualFold(a, b) {
			t.Errorf("%v: both are %s", pair, a)
		}
	}
	for _, c := range []struct{ number, revision, want string }{
		{"HC2-ENG-01", "C", "HC2-ENG-01-C"}, {"HC2", "", "HC2"}, {"", "", "harness"},
	} {
		if got := filename.Sheet(c.number, c.revision); got != c.want {
			t.Errorf("%q %q: %s, want %s", c.number, c.revision, got, c.want)
		}
	}
	if got := filename.Sheet(strings.Repeat("ÄB-", 100), "C7"); !strings.Contains(got, "-C7~") || len(got) > 120 {
		t.Errorf("a long number: %s", got)
	}
	seen := map[string]named{}
	text := rapid.StringOfN(rapid.SampledFrom([]rune("AbB1-./: _~é\u202e\\*con")), 0, 5, -1)
	rapid.Check(t, func(r *rapid.T) {
		n := named{text.Draw(r, "number"), text.Draw(r, "revision")}
		name := strings.ToLower(filename.Sheet(n.number, n.revision))
		if other, taken := seen[name]; taken && other != n {
			r.Fatalf("%+q and %+q are both %s", other, n, name)
		}
		seen[name] = n
		if strings.ContainsAny(name, `/\:*?"<>|`) || strings.HasPrefix(name, ".") || strings.HasPrefix(name, "-") || name == "" ||
			len(name) > 200 {
			r.Fatalf("%+q is called %s", n, name)
		}
	})
}

// No list of one sheet has the name of a list or the page of another.
func TestListNamesNeverCollide(t *testing.T) {
	lists := []string{"branches", "ends", "units", "cut-list", "wire-flags", "pins", "crimps", "splices", "labels", "bill", "loads",
		"feeds",
		"ring-out", "isolation", "loaded-drop", "loops", "spares", "threading", "tubes", "mass", "tools", "consumables",
		"pull-samples"}
	dir := t.TempDir()
	call(t, "", "sheet", "../../testdata/demo.toml", "-o", dir)
	for name := range inFolder(t, dir) {
		list, is := strings.CutPrefix(strings.TrimSuffix(name, ".csv"), "HC2-ENG-01-C-")
		if known := fmt.Sprint(lists); is && !strings.Contains(known, list) {
			t.Errorf("%s is not in this test", list)
		}
	}
	for _, a := range lists {
		for _, b := range lists {
			if a != b && strings.HasSuffix("-"+a, "-"+b) {
				t.Errorf("%s of a sheet X is %s of a sheet X-%s", a, b, strings.TrimSuffix(a, "-"+b))
			}
		}
	}
}
