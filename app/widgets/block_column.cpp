#include "app/widgets/block_column.h"

#include "app/widgets/mark_widget.h"
#include "app/widgets/parts.h"
#include "app/widgets/picture_widget.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QVBoxLayout>

#include <cmath>

namespace rig {

namespace {

const char* kindOf(const HeadingBlock& block)
{
    return block.rank <= 1 ? "title" : "section";
}

QLabel* labelFor(const CellText& text)
{
    QLabel* label = labelOf(text.text, text.role == Role::InkSoft ? "soft" : "body");
    QFont font = label->font();
    font.setStrikeOut(text.struck);
    font.setBold(text.strong);
    label->setFont(font);
    return label;
}

} // namespace

BlockColumn::BlockColumn(QWidget* parent) : QWidget{parent}, m_layout{new QVBoxLayout{this}}
{
    m_layout->setContentsMargins(0, 0, 0, 0);
}

void BlockColumn::setLook(const Look& look)
{
    m_look = look;
    display(std::vector<Block>{m_blocks});
}

void BlockColumn::display(std::span<const Block> blocks)
{
    m_blocks.assign(blocks.begin(), blocks.end());
    delete m_inside;
    m_inside = new QWidget;
    auto* column = new QVBoxLayout{m_inside};
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    for (const Block& block : m_blocks) {
        if (const auto* heading = std::get_if<HeadingBlock>(&block))
            column->addWidget(labelOf(heading->text, kindOf(*heading)));
        else if (const auto* paragraph = std::get_if<ParagraphBlock>(&block))
            column->addWidget(labelOf(paragraph->text, paragraph->role == Role::InkSoft ? "soft" : "body"));
        else if (const auto* table = std::get_if<TableBlock>(&block))
            column->addWidget(tableOf(*table));
        else if (const auto* picture = std::get_if<PictureBlock>(&block))
            column->addWidget(pictureOf(*picture));
    }
    m_layout->addWidget(m_inside);
}

QWidget* BlockColumn::pictureOf(const PictureBlock& block) const
{
    auto* picture = new PictureWidget;
    picture->setLook(m_look);
    picture->setPicture(block);
    return picture;
}

QWidget* BlockColumn::tableOf(const TableBlock& block) const
{
    auto* table = new QWidget;
    auto* grid = new QGridLayout{table};
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(14);
    grid->setVerticalSpacing(6);
    for (int i = 0; i < static_cast<int>(block.columns.size()); ++i) {
        const Column& column = block.columns[static_cast<std::size_t>(i)];
        grid->setColumnStretch(i, static_cast<int>(std::lround(column.share * 10)));
        grid->addWidget(labelOf(column.head, "label"), 0, i, Qt::AlignTop);
    }
    for (int row = 0; row < static_cast<int>(block.rows.size()); ++row) {
        const auto& cells = block.rows[static_cast<std::size_t>(row)];
        for (int i = 0; i < static_cast<int>(cells.size()); ++i)
            grid->addWidget(cellOf(cells[static_cast<std::size_t>(i)]), row + 1, i);
    }
    return table;
}

QWidget* BlockColumn::cellOf(const Cell& cell) const
{
    auto* widget = new QWidget;
    auto* lines = new QVBoxLayout{widget};
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(2);
    for (const CellText& text : cell) {
        auto* line = new QHBoxLayout;
        line->setSpacing(6);
        if (text.mark) {
            auto* mark = new MarkWidget;
            mark->setLook(m_look);
            mark->show(*text.mark);
            mark->setFixedSize(mark->width() * 2 / 3, mark->height() * 2 / 3);
            line->addWidget(mark, 0, Qt::AlignTop);
        }
        line->addWidget(labelFor(text), 1);
        lines->addLayout(line);
    }
    lines->addStretch(1);
    return widget;
}

} // namespace rig
