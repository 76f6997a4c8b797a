//go:build !unix

package file_test

import "errors"

// makePipe fails: there are no named pipes in a folder here.
func makePipe(string) error { return errors.ErrUnsupported }
