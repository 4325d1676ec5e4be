/** Reading and writing files: every fault at once, each with its line and column. Jackson is used here and nowhere else. */
package coldseam.files;
