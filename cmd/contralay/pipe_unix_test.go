//go:build unix

package main

import (
	"os"
	"syscall"
)

// makePipe makes a named pipe.
func makePipe(path string) error { return syscall.Mkfifo(path, 0o600) }

// unblocked is the same terminal, closed at once when it is closed: a file in
// blocking mode stays open as long as someone reads it. No program that is started later
// gets it: else a window that is closed stays open as long as that program runs.
func unblocked(f *os.File) (*os.File, error) {
	defer f.Close()
	syscall.ForkLock.RLock()
	fd, err := syscall.Dup(int(f.Fd()))
	if err == nil {
		syscall.CloseOnExec(fd)
	}
	syscall.ForkLock.RUnlock()
	if err != nil {
		return nil, err
	}
	if err := syscall.SetNonblock(fd, true); err != nil {
		return nil, err
	}
	return os.NewFile(uintptr(fd), f.Name()), nil
}
