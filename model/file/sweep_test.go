package file

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"testing"
	"time"
)

// What a program that is gone left when it was killed is swept by the next save; what is another's,
// what a living program writes and what has another name stays.
func TestSweep(t *testing.T) {
	dir := t.TempDir()
	harness := filepath.Join(dir, "loom.toml")
	was := exec.Command("true")
	if err := was.Run(); err != nil {
		t.Skip(err)
	}
	dead, alive := was.Process.Pid, os.Getpid()
	long := time.Now().Add(-2 * staleAfter)
	for name, old := range map[string]bool{
		fmt.Sprintf(".loom.toml.%s-%d-1.tmp", host(), dead):        false,
		fmt.Sprintf(".loom.toml.%s-%d-2.tmp", "another1", dead):    true,
		".loom.toml.123456789.tmp":                                 true,
		fmt.Sprintf("kept .loom.toml.%s-%d-3", host(), dead):       false,
		fmt.Sprintf(".loom.toml.%s-%d-4.tmp", host(), alive):       false,
		fmt.Sprintf(".loom.toml.%s-%d-5.tmp", "another1", dead):    false,
		".loom.toml.987654321.tmp":                                 false,
		".loom.toml.mine.tmp":                                      true,
		".loom.toml.tmp":                                           true,
		fmt.Sprintf(".loom.toml.bak.%s-%d-6.tmp", host(), dead):    true,
		fmt.Sprintf(".other.toml.%s-%d-7.tmp", host(), dead):       false,
		fmt.Sprintf(".loom.toml.%s-%d-.tmp", host(), dead):         true,
		fmt.Sprintf(".loom.toml.%s-%d-8.tmp.toml", host(), dead):   true,
		fmt.Sprintf(".loom.toml.%s-%d-9.toml", host(), dead):       true,
		fmt.Sprintf("loom.toml.%s-%d-10.tmp", host(), dead):        true,
		fmt.Sprintf(".loom.toml.x-%s-%d-11.tmp", host(), dead):     true,
		fmt.Sprintf(".loom.toml.%s-%d-12.tmp", host(), dead) + "~": true,
	} {
		path := filepath.Join(dir, name)
		if err := os.WriteFile(path, nil, 0o600); err != nil {
			t.Fatal(err)
		}
		if old {
			if err := os.Chtimes(path, long, long); err != nil {
				t.Fatal(err)
			}
		}
	}
	before := names(t, dir)
	if err := Save(harness, numbered("saved")); err != nil {
		t.Fatal(err)
	}
	want := slices.DeleteFunc(before, func(n string) bool {
		return n == fmt.Sprintf(".loom.toml.%s-%d-1.tmp", host(), dead) || n == fmt.Sprintf(".loom.toml.%s-%d-2.tmp", "another1", dead) ||
			n == ".loom.toml.123456789.tmp"
	})
	want = append(want, "loom.toml")
	slices.Sort(want)
	if got := names(t, dir); !slices.Equal(got, want) {
		t.Errorf("there are %q, want %q", got, want)
	}
	SweepBeside("") // a harness without a file: the folder that the program runs in is left alone
}

func names(t *testing.T, dir string) []string {
	t.Helper()
	all, err := os.ReadDir(dir)
	if err != nil {
		t.Fatal(err)
	}
	var out []string
	for _, e := range all {
		out = append(out, e.Name())
	}
	return out
}

// The half of a journal that a killed bench was writing is swept when its place is taken again.
func TestSweepOfTheJournal(t *testing.T) {
	dir := t.TempDir()
	half := slot(dir, "", 1) + half
	if err := os.WriteFile(half, []byte("contr"), 0o600); err != nil {
		t.Fatal(err)
	}
	j := opened(t, dir, "")
	if exists(half) {
		t.Error("it is still there")
	}
	j.Close()
	if left := names(t, dir); len(left) != 0 {
		t.Errorf("%q remain", left)
	}
}
