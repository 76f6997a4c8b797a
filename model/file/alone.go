package file

import (
	"fmt"
	"path/filepath"
	"time"

	"github.com/gofrs/flock"
)

// patience is how long a program waits for another to be done with a file; each takes some
// hundredths of a second.
const patience = 10 * time.Second

// Alone calls do while no other program that asks for the same file by Alone does: each finds in
// it what the one before wrote. A lock lies beside the file meanwhile; a program that dies gives
// it up.
func Alone(path string, do func() error) error {
	target, err := follow(path)
	if err != nil {
		return fmt.Errorf("%s: %w", path, err)
	}
	l, err := waitFor(filepath.Join(filepath.Dir(target), "."+filepath.Base(target)+locking))
	if err != nil {
		return fmt.Errorf("%s cannot be locked against other programs: %w", path, err)
	}
	defer release(l)
	return do()
}

// waitFor takes a lock as soon as it is free.
func waitFor(path string) (*flock.Flock, error) {
	for late := time.Now().Add(patience); ; time.Sleep(5 * time.Millisecond) {
		l, got, err := lock(path)
		if err != nil || got {
			return l, err
		}
		if time.Now().After(late) {
			return nil, fmt.Errorf("another program has held %s for %v. Try again once it is done", path, patience)
		}
	}
}
