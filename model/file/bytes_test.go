package file_test

import (
	"net"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"contralay/model/file"
)

// What is no ordinary file, or far too large for one, is refused at once and named as what it is.
func TestNoOrdinaryFile(t *testing.T) {
	dir := t.TempDir()
	pipe, socket, huge := filepath.Join(dir, "pipe"), filepath.Join(dir, "socket"), filepath.Join(dir, "huge")
	if err := makePipe(pipe); err != nil {
		t.Skip(err)
	}
	l, err := net.Listen("unix", socket)
	if err != nil {
		t.Skip(err)
	}
	defer l.Close()
	if err := os.WriteFile(huge, nil, 0o600); err != nil {
		t.Fatal(err)
	}
	if err := os.Truncate(huge, 10<<30); err != nil { // a hole: it takes no room
		t.Skip(err)
	}
	for path, want := range map[string]string{pipe: "is a pipe", socket: "is a socket", dir: "is a folder", os.DevNull: "is a device",
		"/dev/zero": "is a device", huge: "is larger than 8 MiB"} {
		said := make(chan error, 1)
		go func() {
			_, err := file.Load(path)
			said <- err
		}()
		select {
		case err := <-said:
			if err == nil || !strings.Contains(err.Error(), path) || !strings.Contains(err.Error(), want) ||
				!strings.HasPrefix(err.Error(), "cannot read the harness: ") {
				t.Errorf("%s: %v", path, err)
			}
		case <-time.After(20 * time.Second):
			t.Fatalf("%s is still being read", path)
		}
		if file.Sum(path) != "" {
			t.Errorf("%s has a sum", path)
		}
	}
}
