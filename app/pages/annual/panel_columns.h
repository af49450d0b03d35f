#pragma once

#include <QWidget>

#include <vector>

class QVBoxLayout;

namespace rig {

// Panels in two columns, each as high as it needs; in one, in the order they were added, where two would be
// too narrow.
class PanelColumns : public QWidget
{
    Q_OBJECT

public:
    explicit PanelColumns(QWidget* parent = nullptr);

    void add(QWidget* panel, int column);
    void setTextScale(double scale);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void divide();

    struct Panel
    {
        QWidget* widget = nullptr;
        int column = 0;
    };
    std::vector<Panel> m_panels;
    QVBoxLayout* m_left = nullptr;
    QVBoxLayout* m_right = nullptr;
    double m_scale = 1;
    int m_columns = 0; // as laid out now
};

} // namespace rig
