//go:build !unix

package main

import (
	"errors"
	"os"
)

// makePipe fails: there are no named pipes in a folder here.
func makePipe(string) error { return errors.ErrUnsupported }

// unblocked fails: there are no terminals to be opened here.
func unblocked(*os.File) (*os.File, error) { return nil, errors.ErrUnsupported }
