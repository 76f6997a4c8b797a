package main

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"time"

	"github.com/gofrs/flock"
)

// A set of files appears whole or not at all. Every new file is written in its folder under a
// name of its own and brought to disk; then a list of all of them is written, and from there
// the set counts as new: what a power cut leaves of the renaming is done at the next run. A
// kill before the list leaves the old set, and its leftovers are swept at the next run.

// The names that a set has while it is made. No sheet is called so.
const (
	setNew  = ".sheet-new-" // a file of the new set
	setOld  = ".sheet-old-" // one of the old set, until the new one is in its place
	setList = ".sheet-list" // the files of the new set, once all of them are on disk
	setPart = ".sheet-part" // that list while it is written
	setGone = "gone\x00"    // before a name in the list: a file that the new set does not have
	setMode = fs.FileMode(0o644)
)

// setPatience is how long another program that writes a sheet into the same folder is waited for.
const setPatience = 5 * time.Second

// writeAll puts a set of files into a folder, which is made where there is none. A nil text
// stands for a file that is not to be there. On an error the old set is as it was.
func writeAll(folder string, set map[string][]byte) error {
	if err := os.MkdirAll(folder, 0o755); err != nil {
		return fmt.Errorf("no sheet was written: %w", err)
	}
	if runtime.GOOS != "windows" { // which locks no folder
		lock := flock.New(folder, flock.SetFlag(os.O_RDONLY))
		wait, done := context.WithTimeout(context.Background(), setPatience)
		defer done()
		// A file system that knows no locks is written to all the same.
		if held, err := lock.TryLockContext(wait, setPatience/100); !held && errors.Is(err, context.DeadlineExceeded) {
			return fmt.Errorf("no sheet was written: another program is writing one into %s. Try again when it is done", folder)
		}
		defer lock.Unlock()
	}
	if err := sweep(folder); err != nil {
		return fmt.Errorf("no sheet was written, because what an earlier run left in %s cannot be cleared: %w", folder, err)
	}
	if err := replaceAll(folder, set, os.Rename); err != nil {
		return fmt.Errorf("no sheet was written, and the files in %s are as they were: %w", folder, err)
	}
	return nil
}

// sweep finishes a set that was complete when its run was killed, and undoes what is there of
// one that was not.
func sweep(folder string) error {
	list, err := os.ReadFile(filepath.Join(folder, setList))
	complete := err == nil
	if complete {
		for name := range strings.SplitSeq(strings.TrimSuffix(string(list), "\n"), "\n") {
			if err := finish(folder, name); err != nil {
				return err
			}
		}
	}
	all, err := os.ReadDir(folder)
	if err != nil {
		return err
	}
	for _, e := range all {
		at := filepath.Join(folder, e.Name())
		old, isOld := strings.CutPrefix(e.Name(), setOld)
		switch {
		case isOld && !complete: // it was on the way back
			err = os.Rename(at, filepath.Join(folder, old))
		case isOld, strings.HasPrefix(e.Name(), setNew), e.Name() == setPart:
			err = os.Remove(at)
		}
		if err != nil {
			return err
		}
	}
	if complete {
		return os.Remove(filepath.Join(folder, setList))
	}
	return nil
}

// finish brings one file of a complete set into its place, where that was not done yet.
func finish(folder, name string) error {
	var err error
	if gone, is := strings.CutPrefix(name, setGone); is {
		err = os.Remove(filepath.Join(folder, filepath.Base(gone)))
	} else {
		name = filepath.Base(name)
		err = os.Rename(filepath.Join(folder, setNew+name), filepath.Join(folder, name))
	}
	if errors.Is(err, fs.ErrNotExist) {
		return nil // it was
	}
	return err
}

// replaceAll writes the new set beside the old one and swaps them by rename, which is os.Rename.
func replaceAll(folder string, set map[string][]byte, rename func(from, to string) error) (err error) {
	names := slices.Sorted(maps.Keys(set))
	var list bytes.Buffer
	defer func() {
		if err != nil { // nothing of the new set stays
			os.Remove(filepath.Join(folder, setList))
			for _, n := range names {
				os.Remove(filepath.Join(folder, setNew+n))
			}
		}
	}()
	for _, n := range names {
		if info, err := os.Lstat(filepath.Join(folder, n)); err == nil && !info.Mode().IsRegular() {
			return fmt.Errorf("%s is not a plain file", n)
		} else if err != nil && !errors.Is(err, fs.ErrNotExist) {
			return err
		}
		if set[n] == nil {
			list.WriteString(setGone + n + "\n")
			continue
		}
		if err := writeSynced(filepath.Join(folder, setNew+n), set[n]); err != nil {
			return err
		}
		list.WriteString(n + "\n")
	}
	if err := writeSynced(filepath.Join(folder, setPart), list.Bytes()); err != nil {
		os.Remove(filepath.Join(folder, setPart))
		return err
	}
	if err := rename(filepath.Join(folder, setPart), filepath.Join(folder, setList)); err != nil {
		os.Remove(filepath.Join(folder, setPart))
		return err
	}
	syncDir(folder)
	if err := swapAll(folder, names, set, rename); err != nil {
		return err
	}
	syncDir(folder)
	for _, n := range names {
		os.Remove(filepath.Join(folder, setOld+n))
	}
	os.Remove(filepath.Join(folder, setList))
	syncDir(folder)
	return nil
}

// swapAll moves the old files out of the way and the new ones into their place; where one
// cannot be moved, all go back.
func swapAll(folder string, names []string, set map[string][]byte, rename func(from, to string) error) error {
	at := func(name string) string { return filepath.Join(folder, name) }
	for k, n := range names {
		err := rename(at(n), at(setOld+n))
		if errors.Is(err, fs.ErrNotExist) {
			err = nil
		}
		if err == nil && set[n] != nil {
			err = rename(at(setNew+n), at(n))
		}
		if err == nil {
			continue
		}
		os.Remove(at(setList)) // first: a kill from here on must not bring the new set
		for _, back := range names[:k+1] {
			if os.Rename(at(setOld+back), at(back)) != nil && set[back] != nil && back != n {
				os.Remove(at(back)) // there was none
			}
		}
		return err
	}
	return nil
}

// writeSynced writes a file and brings it to disk; on an error it leaves none.
func writeSynced(name string, text []byte) error {
	f, err := os.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_TRUNC, setMode)
	if err != nil {
		return err
	}
	_, err = f.Write(text)
	if err == nil {
		err = f.Sync()
	}
	if cerr := f.Close(); err == nil {
		err = cerr
	}
	if err != nil {
		os.Remove(name)
	}
	return err
}

// syncDir brings names to disk, as far as the file system can.
func syncDir(folder string) {
	if runtime.GOOS == "windows" {
		return
	}
	if f, err := os.Open(folder); err == nil {
		f.Sync() // a file system that refuses keeps names in its own way
		f.Close()
	}
}
