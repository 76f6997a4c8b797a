package main

import (
	"io"
	"os"
	"strings"
	"testing"
	"time"

	"github.com/creack/pty"

	"contralay/model/shorttest"
)

// What takes long says so where somebody reads, takes the line away again, and says
// nothing where nobody does or nothing is slow.
func TestSlowly(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	master, slave, err := pty.Open()
	if err != nil {
		t.Skipf("no pseudo-terminal can be opened here: %v", err)
	}
	defer master.Close()
	file, err := os.Create(t.TempDir() + "/err")
	if err != nil {
		t.Fatal(err)
	}
	work := func(d time.Duration) func() int { return func() int { time.Sleep(d); return 7 } }
	if slowly(world{err: file}, "counting", work(2*noticed)) != 7 || slowly(world{err: slave}, "quick", work(0)) != 7 ||
		slowly(world{err: slave}, "counting", work(3*noticed)) != 7 {
		t.Error("the work is lost")
	}
	slave.Close()
	said, _ := io.ReadAll(master) // ends with an error: nobody has the other end open
	text := string(said)
	if strings.Contains(text, "quick") || !strings.HasPrefix(text, "\rcounting, 0.") || !strings.HasSuffix(text, " \r") {
		t.Errorf("%q", text)
	}
	if info, err := file.Stat(); err != nil || info.Size() != 0 {
		t.Error("a file gets what only a person needs")
	}
}
