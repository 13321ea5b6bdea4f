package longpoint.packet;

import longpoint.export.ZipWriter;

/**
 * A file of a packet, not yet written.
 *
 * @param name in the folder
 * @param content may be written from any thread, and more than once
 */
record PacketFile(String name, Output output, ZipWriter.Content content) {}
