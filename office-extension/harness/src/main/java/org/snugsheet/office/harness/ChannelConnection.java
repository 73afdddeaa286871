package org.snugsheet.office.harness;

import com.sun.star.connection.XConnection;
import com.sun.star.io.IOException;
import java.net.SocketAddress;
import java.nio.ByteBuffer;
import java.nio.channels.SocketChannel;

/**
 * The line to the office, over a channel of the JDK.
 *
 * <p>The UNO classes bring a pipe of their own, but it needs a native library that only the office's Java loader
 * finds; a test started from an editor would not. On every Unix the office's pipe is a plain local socket, and the JDK
 * can talk to one of those since Java 16.
 */
final class ChannelConnection implements XConnection {
    private final SocketChannel channel;
    private final String description;

    private ChannelConnection(SocketChannel channel, String description) {
        this.channel = channel;
        this.description = description;
    }

    static ChannelConnection to(SocketAddress address) throws java.io.IOException {
        return new ChannelConnection(SocketChannel.open(address), address.toString());
    }

    /**
     * Waits for all bytes that are wanted; fewer mean that the office hung up. All of them, as the office’s own connections do: the office’s
     * reader asks for the rest of a large answer with a wrong count, which is negative when more than half of it had come.
     */
    @Override
    public int read(byte[][] bytes, int wanted) throws IOException {
        ByteBuffer buffer = ByteBuffer.allocate(wanted);
        try {
            boolean isOpen = true;
            while (isOpen && buffer.hasRemaining()) {
                isOpen = channel.read(buffer) >= 0;
            }
            bytes[0] = buffer.array();
            return buffer.position();
        } catch (java.io.IOException e) {
            throw failure(e);
        }
    }

    @Override
    public void write(byte[] bytes) throws IOException {
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        try {
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
        } catch (java.io.IOException e) {
            throw failure(e);
        }
    }

    @Override
    public void flush() {
        // A channel keeps nothing back.
    }

    @Override
    public void close() throws IOException {
        try {
            channel.close();
        } catch (java.io.IOException e) {
            throw failure(e);
        }
    }

    @Override
    public String getDescription() {
        return description;
    }

    private static IOException failure(java.io.IOException cause) {
        return new IOException(cause);
    }
}
