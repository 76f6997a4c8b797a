package file

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"strconv"
	"strings"
	"syscall"
	"time"
)

// A program that is killed while it saves leaves the file that it was writing, under a name of
// its own: ".loom.toml.HOST-PID-NUMBER.tmp". It is swept once that program is gone.

// staleAfter is how long a save can last at most. Where it cannot be known whether the program
// that wrote a file is gone, for it ran on another machine or before its names told who it is,
// the file counts as left once it is older.
const staleAfter = 24 * time.Hour

// tempPattern is the pattern of os.CreateTemp for what takes the place of target.
func tempPattern(target string) string {
	return fmt.Sprintf(".%s.%s-%d-*.tmp", filepath.Base(target), host(), os.Getpid())
}

// host is a short name for this machine; folders may be shared with others.
func host() string {
	name, err := os.Hostname()
	if err != nil {
		return "?"
	}
	return SumOf([]byte(name))[:8]
}

// SweepBeside removes what programs that are gone left beside a harness's file when they were
// killed while they saved it. Nothing else is touched, and nothing is said: it was never whole.
func SweepBeside(path string) {
	if target, err := follow(path); err == nil && path != "" {
		sweepBeside(target)
	}
}

func sweepBeside(target string) {
	dir, head := filepath.Dir(target), "."+filepath.Base(target)+"."
	all, err := os.ReadDir(dir)
	if err != nil {
		return
	}
	for _, e := range all {
		rest, ours := strings.CutPrefix(e.Name(), head)
		middle, temp := strings.CutSuffix(rest, ".tmp")
		if !ours || !temp || !e.Type().IsRegular() {
			continue
		}
		if info, err := e.Info(); err == nil && left(middle, time.Since(info.ModTime())) {
			os.Remove(filepath.Join(dir, e.Name()))
		}
	}
}

// left reports whether the program that named a file of an age so is gone.
func left(middle string, age time.Duration) bool {
	part := strings.Split(middle, "-")
	if _, err := strconv.ParseUint(part[len(part)-1], 10, 64); err != nil {
		return false // no name of ours
	}
	switch len(part) {
	case 1: // as they were named before
		return age > staleAfter
	case 3:
		pid, err := strconv.Atoi(part[1])
		return err == nil && pid > 0 && !strings.Contains(part[0], ".") && (age > staleAfter || part[0] == host() && gone(pid))
	}
	return false
}

// gone reports whether no process of this machine has a number. Windows does not tell.
func gone(pid int) bool {
	if runtime.GOOS == "windows" {
		return false
	}
	p, err := os.FindProcess(pid)
	if err != nil {
		return true
	}
	err = p.Signal(syscall.Signal(0))
	return errors.Is(err, os.ErrProcessDone) || errors.Is(err, syscall.ESRCH)
}
