// SPDX-License-Identifier: Apache-2.0
package sillbook.store.sqlite;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import sillbook.store.Feed;

/**
 * A feed that another thread goes through, a block of readings at a time, while the block before is being taken. Once it is closed nobody goes
 * through the feed any more.
 */
final class FeedAhead implements Feed, AutoCloseable {
    /** In a block; some milliseconds of reading. */
    static final int READINGS = 8192;

    private final Feed feed;
    private final ExecutorService reader;
    private Block block = new Block();
    private Future<Block> next;
    private int position = -1;

    FeedAhead(Feed feed) {
        this.feed = feed;
        reader = Executors.newSingleThreadExecutor(task -> {
            Thread thread = new Thread(task, "reading");
            thread.setDaemon(true);
            return thread;
        });
        next = filling(new Block());
    }

    private Future<Block> filling(Block spare) {
        return reader.submit(() -> {
            spare.fill(feed);
            return spare;
        });
    }

    @Override
    public boolean advance() {
        position++;
        if (position == block.count && !block.isLast) {
            Block taken = block;
            block = await();
            position = 0;
            if (!block.isLast) {
                next = filling(taken);
            }
        }
        return position < block.count;
    }

    private Block await() {
        try {
            return Intake.Stopped.orResult(next);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException failure) {
                throw failure;
            }
            throw new IllegalStateException("reading came to nothing", e);
        }
    }

    @Override
    public long at() {
        return block.at[position];
    }

    @Override
    public int milli() {
        return block.milli[position];
    }

    @Override
    public int line() {
        return block.line[position];
    }

    @Override
    public boolean isSuspicious() {
        return block.isSuspicious[position];
    }

    /** Waits until the block is full that is being read. */
    @Override
    public void close() {
        reader.shutdown();
        boolean isOver = false;
        boolean isInterrupted = false;
        while (!isOver) {
            try {
                isOver = reader.awaitTermination(1, TimeUnit.MINUTES);
            } catch (InterruptedException e) {
                isInterrupted = true;
            }
        }
        if (isInterrupted) {
            Thread.currentThread().interrupt();
        }
    }

    /** Readings in the order of the feed. */
    private static final class Block {
        private final long[] at = new long[READINGS];
        private final int[] milli = new int[READINGS];
        private final int[] line = new int[READINGS];
        private final boolean[] isSuspicious = new boolean[READINGS];
        private int count;
        private boolean isLast;

        void fill(Feed feed) {
            count = 0;
            while (count < READINGS && feed.advance()) {
                at[count] = feed.at();
                milli[count] = feed.milli();
                line[count] = feed.line();
                isSuspicious[count] = feed.isSuspicious();
                count++;
            }
            isLast = count < READINGS;
        }
    }
}
