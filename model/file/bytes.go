package file

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"io"
	"io/fs"
	"os"
	"strings"
)

// Bytes is what an ordinary file holds, up to so many bytes; what says in a message what it is
// read as, with its article. A folder, a device and what never ends is refused before anything
// of it is read: opening a pipe would wait for somebody to write to it.
func Bytes(path, what string, most int64) ([]byte, error) {
	info, err := os.Stat(path)
	if err == nil {
		err = ordinary(path, info, what, most)
	}
	if err != nil {
		return nil, fmt.Errorf("cannot read %s: %w", what, err)
	}
	f, err := os.Open(path)
	if err != nil {
		return nil, fmt.Errorf("cannot read %s: %w", what, err)
	}
	defer f.Close()
	if info, err = f.Stat(); err == nil { // another file may have taken its place
		err = ordinary(path, info, what, most)
	}
	var text []byte
	if err == nil {
		text, err = io.ReadAll(io.LimitReader(f, most+1))
	}
	if err == nil && int64(len(text)) > most { // it grows, or did not say how large it is
		err = tooLarge(path, what, most)
	}
	if err != nil {
		return nil, fmt.Errorf("cannot read %s: %w", what, err)
	}
	return text, nil
}

// ordinary is nil for a file that may be read.
func ordinary(path string, info fs.FileInfo, what string, most int64) error {
	if says := kindOf(info.Mode()); says != "" {
		return fmt.Errorf("%s is %s: give an ordinary file", path, says)
	}
	if info.Size() > most {
		return tooLarge(path, what, most)
	}
	return nil
}

func tooLarge(path, what string, most int64) error {
	noun := strings.TrimPrefix(what, "the ")
	return fmt.Errorf("%s is larger than %d MiB: that is no %s", path, most>>20, noun)
}

// kindOf says what something is that is no ordinary file; "" for one.
func kindOf(m fs.FileMode) string {
	switch {
	case m.IsRegular():
		return ""
	case m.IsDir():
		return "a folder"
	case m&fs.ModeNamedPipe != 0:
		return "a pipe"
	case m&fs.ModeSocket != 0:
		return "a socket"
	case m&fs.ModeDevice != 0:
		return "a device"
	}
	return "no ordinary file"
}

// Text is the text of a harness's file as it stands.
func Text(path string) ([]byte, error) { return Bytes(path, "the harness", maxSize) }

// Sum tells one content of a file from another; "" where there is none that can be read.
func Sum(path string) string {
	if path == "" {
		return ""
	}
	text, err := Text(path)
	if err != nil {
		return ""
	}
	return SumOf(text)
}

// SumOf is Sum of a text.
func SumOf(text []byte) string {
	sum := sha256.Sum256(text)
	return hex.EncodeToString(sum[:])
}
