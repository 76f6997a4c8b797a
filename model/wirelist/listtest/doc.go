// Package listtest holds what the tests of several parts of the list reader share: where
// the lists of the test data are, workbooks made in memory, limits small enough to reach.
//
// Only tests import it; TestTower holds that.
package listtest
