//go:build unix

package file_test

import "syscall"

// makePipe makes a named pipe.
func makePipe(path string) error { return syscall.Mkfifo(path, 0o600) }
