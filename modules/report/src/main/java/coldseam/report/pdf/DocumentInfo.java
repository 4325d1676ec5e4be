package coldseam.report.pdf;

/**
 * What a document says about itself.
 *
 * @param subject one line
 * @param creator the tool and its version
 * @param keywords for searching
 * @param identity that its id is made of; equal documents have equal ones
 */
public record DocumentInfo(String title, String subject, String creator, String keywords, long identity) {}
