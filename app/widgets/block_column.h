#pragma once

#include "app/blocks/blocks.h"
#include "app/theme/theme.h"

#include <QWidget>

#include <span>
#include <vector>

class QVBoxLayout;

namespace rig {

// A report's blocks on the screen, one below the other. What is filled in by hand is left to paper.
class BlockColumn : public QWidget
{
    Q_OBJECT

public:
    explicit BlockColumn(QWidget* parent = nullptr);

    void display(std::span<const Block> blocks);
    void setLook(const Look& look);

private:
    QWidget* pictureOf(const PictureBlock& block) const;
    QWidget* tableOf(const TableBlock& block) const;
    QWidget* cellOf(const Cell& cell) const;

    Look m_look;
    QWidget* m_inside = nullptr; // all that is shown; made anew each time
    std::vector<Block> m_blocks;
    QVBoxLayout* m_layout = nullptr;
};

} // namespace rig
