#pragma once

#include <QLayout>

#include <map>
#include <optional>
#include <vector>

namespace rig {

// Lays its children in rows from the left and begins a new row where the next would not fit. With equal
// widths every child of a row is stretched to the same share, so that a row of tiles fills its line.
class WrapLayout : public QLayout
{
public:
    explicit WrapLayout(int gap, bool equalWidths, QWidget* parent = nullptr);
    ~WrapLayout() override;

    void addItem(QLayoutItem* item) override;
    int count() const override;
    QLayoutItem* itemAt(int index) const override;
    QLayoutItem* takeAt(int index) override;
    QSize sizeHint() const override;
    QSize minimumSize() const override;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    void setGeometry(const QRect& rect) override;
    void invalidate() override;

private:
    using Row = std::vector<QLayoutItem*>;
    std::vector<Row> rowsIn(int width) const;
    int rowHeight(const Row& row, int width) const;
    int itemWidth(const Row& row, const QLayoutItem& item, int width) const;
    int heightIn(int width) const;

    std::vector<QLayoutItem*> m_items;
    int m_gap;
    bool m_equalWidths;
    mutable std::map<int, int> m_heights; // by width; the layout above asks for the same ones over and over
    mutable std::optional<QSize> m_minimum;
};

} // namespace rig
