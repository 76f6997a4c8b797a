package file

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"sync"
	"syscall"

	"contralay/model/file/schema"
)

// readBack is how long a text is read back whole before it is saved, in bytes: some 6,000 wires. Of a longer one
// the schema is asked.
const readBack = 1 << 20

// newMode is what a new file may do: the owner writes, all read.
const newMode fs.FileMode = 0o644

// Save writes the document to path. The file there is at every moment the whole
// old or the whole new one, whatever fails; the old one stays as path + ".bak".
// Its mode is kept. A symbolic link stays one: the file that it leads to is
// replaced, with the .bak beside it.
//
// A document that Parse would refuse is not written: the error then holds the
// Errors that say why. On every error the file at path is as it was, but where the
// error says that it is saved.
func Save(path string, d Document) error {
	text, isSound := encodeSound(d)
	if len(text) <= readBack || !isSound {
		if _, err := Parse(text, path); err != nil {
			return fmt.Errorf("%s was not saved, because it could not be read back:\n%w", path, err)
		}
	}
	return swap(path, text, true)
}

// encodeSound is the text of a document and whether Parse would take it for sure, which is said of long ones alone. The head is read
// back, the rest is asked of the schema, beside the writing: to read a large harness back takes more than all else that is done to save
// it.
func encodeSound(d Document) (text []byte, isSound bool) {
	const fewest = 4096 // wires; fewer are a text that is read back
	if len(d.Harness.Wires) < fewest {
		return Encode(d), false
	}
	var side sync.WaitGroup
	side.Go(func() { isSound = schema.Sound(&d.Harness) })
	text = Encode(d)
	side.Wait()
	_, err := Parse(Encode(Document{Head: d.Head}), "")
	return text, isSound && err == nil && len(text) <= maxSize
}

// Write makes text the file at path with the care of Save, whatever the text is, and keeps no
// .bak.
func Write(path string, text []byte) error { return swap(path, text, false) }

// swap writes a text beside path and puts it in the place of what is there, with its mode; where
// path is a link, of what that leads to.
func swap(path string, text []byte, bak bool) error {
	target, err := follow(path)
	if err != nil {
		return notSaved(path, err)
	}
	mode, exists, err := standing(target)
	if err != nil {
		return notSaved(path, err)
	}
	sweepBeside(target)
	temp, err := writeTemp(target, mode, func(w io.Writer) error {
		_, err := w.Write(text)
		return err
	})
	if err != nil {
		return notSaved(path, err)
	}
	if exists && bak {
		if err := keepOld(target, mode); err != nil {
			os.Remove(temp)
			return notSaved(path, fmt.Errorf("the old file cannot be kept as %s: %w", target+".bak", err))
		}
	}
	if err := os.Rename(temp, target); err != nil {
		os.Remove(temp)
		return notSaved(path, err)
	}
	if err := syncFolder(filepath.Dir(target)); err != nil {
		return NotOnDisk{fmt.Errorf("%s was saved, but its folder could not be written to disk. A power cut now may bring the old file "+
			"back: %w", path, err)}
	}
	return nil
}

// NotOnDisk is the error of a file that was saved, but that a power cut may lose.
type NotOnDisk struct{ error }

// Unwrap is what the disk said.
func (n NotOnDisk) Unwrap() error { return errors.Unwrap(n.error) }

// WriteNew writes a file that is not there yet, whole or not at all. Where something is there
// already the error is fs.ErrExist.
func WriteNew(path string, text []byte) error {
	there := fmt.Errorf("%s exists already and was not changed: %w", path, fs.ErrExist)
	if _, err := os.Lstat(path); err == nil {
		return there
	} else if !errors.Is(err, fs.ErrNotExist) {
		return err
	}
	sweepBeside(path)
	temp, err := writeTemp(path, newMode, func(w io.Writer) error {
		_, err := w.Write(text)
		return err
	})
	if err != nil {
		return fmt.Errorf("%s was not written: %w", path, err)
	}
	defer os.Remove(temp)
	switch err := os.Link(temp, path); { // unlike a renaming it takes no file's place
	case errors.Is(err, fs.ErrExist):
		return there
	case err != nil: // not every file system can link
		if err := os.Rename(temp, path); err != nil {
			return fmt.Errorf("%s was not written: %w", path, err)
		}
	}
	return syncFolder(filepath.Dir(path))
}

func notSaved(path string, err error) error {
	return fmt.Errorf("%s was not saved, and the file there is as it was: %w", path, err)
}

// follow goes along symbolic links to the file that is meant, which need not be
// there yet.
func follow(path string) (string, error) {
	const most = 40 // as many as Linux follows (path_resolution(7))
	for range most {
		info, err := os.Lstat(path)
		if errors.Is(err, fs.ErrNotExist) {
			return path, nil
		}
		if err != nil {
			return "", err
		}
		if info.Mode()&fs.ModeSymlink == 0 {
			return path, nil
		}
		next, err := os.Readlink(path)
		if err != nil {
			return "", err
		}
		if !filepath.IsAbs(next) {
			next = filepath.Join(filepath.Dir(path), next)
		}
		path = next
	}
	return "", errors.New("its symbolic links go round in a circle")
}

// standing says what stands at target now: the mode to write with, and whether
// there is an old file to keep.
func standing(target string) (mode fs.FileMode, exists bool, err error) {
	info, err := os.Stat(target)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return newMode, false, nil
	case err != nil:
		return 0, false, err
	case kindOf(info.Mode()) != "":
		return 0, false, fmt.Errorf("it is %s", kindOf(info.Mode()))
	case info.Mode().Perm()&0o222 == 0:
		return 0, false, errors.New("it is write-protected")
	}
	return info.Mode().Perm(), true, nil
}

// writeTemp writes a file of its own beside target and brings it to disk. On an
// error it leaves nothing behind.
func writeTemp(target string, mode fs.FileMode, fill func(io.Writer) error) (name string, err error) {
	f, err := os.CreateTemp(filepath.Dir(target), tempPattern(target))
	if err != nil {
		return "", err
	}
	defer func() {
		if err != nil {
			f.Close() // a second Close is harmless
			os.Remove(f.Name())
		}
	}()
	if err := fill(f); err != nil {
		return "", err
	}
	if err := f.Chmod(mode); err != nil && runtime.GOOS != "windows" {
		return "", err
	}
	if err := f.Sync(); err != nil {
		return "", err
	}
	if err := f.Close(); err != nil {
		return "", err
	}
	return f.Name(), nil
}

// keepOld makes target.bak a whole copy of target, which stays in its place. It
// is a copy, not a link: where the .bak is a link to target already, renaming
// does nothing (rename(2)), and not every file system can link.
func keepOld(target string, mode fs.FileMode) error {
	temp, err := writeTemp(target, mode, func(w io.Writer) error {
		old, err := os.Open(target)
		if err != nil {
			return err
		}
		defer old.Close()
		_, err = io.Copy(w, old)
		return err
	})
	if err != nil {
		return err
	}
	if err := os.Rename(temp, target+".bak"); err != nil {
		os.Remove(temp)
		return err
	}
	return nil
}

// syncFolder brings the new name to disk. Windows cannot; some network file
// systems refuse, and then keep names in their own way.
func syncFolder(dir string) error {
	if runtime.GOOS == "windows" {
		return nil
	}
	f, err := os.Open(dir)
	if err != nil {
		return err
	}
	defer f.Close()
	if err := f.Sync(); err != nil && !errors.Is(err, syscall.EINVAL) && !errors.Is(err, errors.ErrUnsupported) {
		return err
	}
	return nil
}
