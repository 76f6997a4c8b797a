//go:build !unix

package main

import "errors"

// makePipe fails: there are no named pipes in a folder here.
func makePipe(string) error { return errors.ErrUnsupported }
